/* Firmware for one finger, as a microcontroller would run it from a timer: whole numbers, no heap, no library.
 *
 *   position   a proportional loop with damping, an integral that cannot wind up, and feed-forward for friction and back-EMF
 *   grasp      closes until the current is high and the shaft stands; squeezes; switches off with shorted leads and watches for a slip
 *   release    pays out until the finger is open
 *
 * Positions are in steps of the angle sensor's converter, currents in steps of the current sense, the output in thousandths of the supply.
 * Invented by us, as the finger it is for. On a board, call `init` once and `step` from a timer, fill the inputs from the converters, and give the
 * outputs to the bridge; nothing below changes.
 *
 *     cc -std=c99 -O2 -shared -fPIC -I engine/drive -o scenarios/firmware/finger.so scenarios/firmware/finger.c
 */
#include "sinewright_firmware.h"

/* What differs from hand to hand, in the order of the list below. */
enum { ZERO, COUNTS_PER_TURN, GAIN, INTEGRAL, DAMPING, BACK_EMF, FRICTION, CURRENT_ZERO, TOUCH_CURRENT, SQUEEZE_CURRENT, SLIP, PARAMETERS };

static const sinewright_parameter parameters[PARAMETERS] = {
    {"zero", "1", 0, 1},              /* count of the angle sensor with the finger open */
    {"counts_per_turn", "1", 0, 1},   /* of the output shaft */
    {"gain", "1", 6, 0},              /* thousandths for a count */
    {"integral", "1", 10, 0},         /* thousandths a second for a count */
    {"damping", "1", 100, 0},         /* thousandths for a count in a sample */
    {"back_emf", "1", 0, 0},          /* the same, times the speed that is asked for */
    {"friction", "1", 0, 0},          /* thousandths, with the sign of the speed that is asked for */
    {"current_zero", "1", 0, 1},      /* count of the current sense without current */
    {"touch_current", "1", 0, 1},     /* counts above it */
    {"squeeze_current", "A", 0, 1},   /* that the driver keeps while squeezing */
    {"slip", "1", 15, 0}              /* counts */
};

enum { FULL = 1000, CLOSE = 900, OPEN = -900, FINE = 256 }; /* thousandths; FINE: fractions that the integral and the speed keep */
enum { TOUCH_TIME = 40, SQUEEZE_TIME = 200 };               /* ms */

typedef enum { FOLLOWS, CLOSES, SQUEEZES, HOLDS, OPENS, IS_OPEN } phase;

typedef struct {
  int32_t number[PARAMETERS]; /* rounded; the current in mA */
  int32_t samples_per_second;
  uint32_t request;
  int32_t last;     /* count of the step before */
  int32_t speed;    /* counts in a sample × FINE, smoothed */
  int32_t sum;      /* of the integral, thousandths × FINE × samples_per_second */
  int32_t since;    /* samples in this phase, or of what looks like touch */
  int32_t held_at;  /* count at the end of squeezing */
  phase now;
} finger;

static int32_t rounded(double x) { return (int32_t)(x < 0 ? x - 0.5 : x + 0.5); }

static int32_t cut(int32_t x, int32_t limit) { return x > limit ? limit : x < -limit ? -limit : x; }

static int32_t init(void *state, const sinewright_settings *settings) {
  finger *f = (finger *)state;
  int i;
  for (i = 0; i < PARAMETERS; ++i) f->number[i] = rounded(settings->parameter[i]);
  f->number[SQUEEZE_CURRENT] = rounded(1000 * settings->parameter[SQUEEZE_CURRENT]);
  f->samples_per_second = rounded(1 / settings->period);
  if (f->samples_per_second < 200 || f->samples_per_second > 4000) return 1; /* too slow to be stable, or the sums overflow */
  if (f->number[COUNTS_PER_TURN] <= 0) return 2;
  return 0;
}

static int32_t samples(const finger *f, int32_t milliseconds) { return milliseconds * f->samples_per_second / 1000; }

static void enter(finger *f, phase next) {
  f->now = next;
  f->since = 0;
}

static int32_t follow(finger *f, int32_t count, int32_t wanted, int32_t wanted_speed) {
  const int32_t *n = f->number;
  const int32_t error = wanted - count;
  const int32_t ahead = n[BACK_EMF] * wanted_speed / FINE + (wanted_speed > 0 ? n[FRICTION] : wanted_speed < 0 ? -n[FRICTION] : 0);
  const int32_t raw = n[GAIN] * error + n[DAMPING] * (wanted_speed - f->speed) / FINE + ahead + f->sum / FINE / f->samples_per_second;
  const int32_t duty = cut(raw, FULL);
  /* The integral stands still while the output is cut in its direction. */
  if (duty == raw || (raw > 0) != (error > 0)) f->sum = cut(f->sum + FINE * n[INTEGRAL] * error, FULL * FINE * f->samples_per_second);
  return duty;
}

static void step(void *state, const sinewright_inputs *in, sinewright_outputs *out) {
  finger *f = (finger *)state;
  const int32_t *n = f->number;
  const int32_t count = in->angle_count, current = in->current_count - n[CURRENT_ZERO];
  int32_t duty = 0;

  if (in->sample == 0) f->last = count;
  f->speed += (FINE * (count - f->last) - f->speed) / 8;
  f->last = count;
  if (in->request != f->request) {
    f->request = in->request;
    enter(f, in->asked == SINEWRIGHT_ASKS_GRASP ? CLOSES : in->asked == SINEWRIGHT_ASKS_RELEASE ? OPENS : FOLLOWS);
    f->sum = 0;
  }
  ++f->since;

  switch (f->now) {
    case FOLLOWS: {
      /* The host speaks in radians; from here on it is counts. */
      const double per_radian = n[COUNTS_PER_TURN] / 6.283185307179586;
      const int32_t wanted = n[ZERO] + rounded(in->set_point * per_radian);
      duty = follow(f, count, wanted, rounded(FINE * in->set_point_rate * per_radian / f->samples_per_second));
      break;
    }
    case CLOSES:
      duty = CLOSE;
      if (current < n[TOUCH_CURRENT] || f->speed > FINE / 8) f->since = 0;
      if (f->since >= samples(f, TOUCH_TIME)) enter(f, SQUEEZES);
      break;
    case SQUEEZES:
      duty = FULL;
      if (f->since < samples(f, SQUEEZE_TIME)) break;
      f->held_at = count;
      enter(f, HOLDS);
      break;
    case HOLDS:
      if (count < f->held_at - n[SLIP]) enter(f, SQUEEZES);
      break;
    case OPENS:
      duty = OPEN;
      if (count <= n[ZERO]) enter(f, IS_OPEN);
      break;
    case IS_OPEN:
      break;
  }

  out->mode = f->now == HOLDS || f->now == IS_OPEN ? SINEWRIGHT_LEADS_SHORTED : SINEWRIGHT_DRIVE_DUTY;
  out->drive = duty / (double)FULL;
  out->current_limit = f->now == SQUEEZES ? 0.001 * n[SQUEEZE_CURRENT] : 0;
  out->told[0] = f->now;
}

SINEWRIGHT_VISIBLE const sinewright_firmware sinewright_this_firmware = {
    SINEWRIGHT_FIRMWARE_HEAD, "one finger", sizeof(finger), PARAMETERS, parameters, init, step};
