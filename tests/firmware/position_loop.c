/* The same loop as the built-in one, operation by operation, for a comparison to the bit. */
#include "sinewright_firmware.h"

static const sinewright_parameter parameters[] = {{"gain", "V/rad", 0, 1}, {"integral", "V/rad.s-1", 0, 0}, {"duty", "1", 0, 0}};

typedef struct {
  double gain, integral, period, limit, supply, sum;
  int32_t by_duty;
  uint32_t steps;
} loop;

static int32_t init(void *state, const sinewright_settings *settings) {
  loop *l = (loop *)state;
  if (l->steps != 0 || l->sum != 0) return 7; /* the block was not zero */
  l->gain = settings->parameter[0];
  l->integral = settings->parameter[1];
  l->by_duty = settings->parameter[2] != 0;
  l->period = settings->period;
  l->limit = settings->voltage_limit;
  l->supply = settings->supply_voltage;
  return l->gain < 0 ? 3 : 0;
}

static void step(void *state, const sinewright_inputs *in, sinewright_outputs *out) {
  loop *l = (loop *)state;
  const double error = in->set_point - in->angle;
  double voltage = l->gain * error + l->sum;
  int cut = 0;
  if (voltage > l->limit) { voltage = l->limit; cut = 1; }
  if (voltage < -l->limit) { voltage = -l->limit; cut = -1; }
  if (cut == 0 || (error > 0 ? 1 : -1) != cut) l->sum += l->integral * error * l->period;
  out->mode = l->by_duty ? SINEWRIGHT_DRIVE_DUTY : SINEWRIGHT_DRIVE_VOLTAGE;
  out->drive = l->by_duty ? voltage / l->supply : voltage;
  out->told[0] = (double)++l->steps;
  out->told[1] = in->time;
  out->told[2] = (double)in->request;
  out->told[3] = in->supply_voltage;
}

SINEWRIGHT_VISIBLE const sinewright_firmware sinewright_this_firmware = {
    SINEWRIGHT_FIRMWARE_HEAD, "test loop", sizeof(loop), 3, parameters, init, step};
