/* The door between a simulated hand and firmware of your own. Plain C99, nothing else is needed: copy this file beside your sources.
 *
 * Compiled for a microcontroller, `step` is called from a timer; compiled as a shared library, the simulation calls it at the same times.
 *
 *     cc -std=c99 -O2 -shared -fPIC -I . -o my_firmware.so my_firmware.c
 *
 * A library defines one object, `sinewright_this_firmware` below. All that it remembers lives in the state block that the caller owns:
 * a hand may run the same firmware on several drives, and studies run many hands at once. No variable of static storage may change.
 *
 * Angles are those of the output shaft; positive angles, voltages and currents wind the cord in.
 */
#ifndef SINEWRIGHT_FIRMWARE_H
#define SINEWRIGHT_FIRMWARE_H

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Changes whenever anything below changes. */
#define SINEWRIGHT_FIRMWARE_VERSION 1

/* A number that the firmware is given when it starts, by name. The unit decides in which the scenario may write it; it arrives in SI units
 * (rad, A, V, s). "1" for a plain number. */
typedef struct sinewright_parameter {
  const char *name;
  const char *unit;
  double standard;   /* if the scenario does not give it */
  int32_t required;  /* not 0: the scenario must give it */
} sinewright_parameter;

/* What holds from power-on to power-off. */
typedef struct sinewright_settings {
  double period;            /* from one step to the next [s] */
  double voltage_limit;     /* what goes beyond is cut [V] */
  double supply_voltage;    /* nominal, open-circuit [V] */
  const double *parameter;  /* in the order of the firmware's own list; stays valid */
} sinewright_settings;

/* What the host asks for. */
enum {
  SINEWRIGHT_ASKS_POSITION = 1, /* of the shaft: set_point [rad] */
  SINEWRIGHT_ASKS_SPEED = 2,    /* of the shaft: set_point [rad/s] */
  SINEWRIGHT_ASKS_CURRENT = 3,  /* of the motor: set_point [A] */
  SINEWRIGHT_ASKS_GRASP = 4,
  SINEWRIGHT_ASKS_RELEASE = 5,
  SINEWRIGHT_ASKS_FORCE = 6 /* set_point [N] */
};

/* What the pins say at a step. */
typedef struct sinewright_inputs {
  double time;            /* since power-on: sample × period [s] */
  uint32_t sample;        /* number of the step, from 0 at power-on */
  int32_t asked;          /* one of SINEWRIGHT_ASKS_… */
  uint32_t request;       /* number of the request, from 1 at power-on */
  double set_point;       /* of the request, where it now stands on its way; 0 for grasp and release */
  double set_point_rate;  /* of a position [rad/s] */
  int32_t angle_count;    /* what the angle sensor's converter or counter says */
  int32_t current_count;  /* what the current sense's converter says */
  double angle;           /* the reading that the model's sensor data make of its count [rad] */
  double current;         /* the same for the current [A] */
  double supply_voltage;  /* at the supply's terminals [V] */
  int32_t has_angle;      /* 0: the drive has no sensor; the true angle is shown and the count is 0 */
  int32_t has_current;    /* 0: no current sense; the true current is shown and the count is 0 */
} sinewright_inputs;

/* What the driver does until the next step. */
enum {
  SINEWRIGHT_LEADS_OPEN = 0,    /* off */
  SINEWRIGHT_LEADS_SHORTED = 1, /* off, the motor brakes itself */
  SINEWRIGHT_DRIVE_VOLTAGE = 2, /* `drive` in volts */
  SINEWRIGHT_DRIVE_DUTY = 3     /* `drive` from −1 to 1, a share of the supply */
};

#define SINEWRIGHT_TOLD 4

/* What the firmware wants. Zero when a step begins. */
typedef struct sinewright_outputs {
  int32_t mode;                  /* one of the above */
  double drive;                  /* voltage or duty */
  double current_limit;          /* that the driver shall keep, at most its own [A]; 0: its own */
  double told[SINEWRIGHT_TOLD];  /* whatever you want to see over time: the record keeps it */
} sinewright_outputs;

typedef struct sinewright_firmware {
  uint32_t version; /* first, and checked before anything else is looked at */
  uint32_t settings_size, inputs_size, outputs_size, parameter_size;
  const char *name;
  uint32_t state_size; /* of the state block [bytes] */
  uint32_t parameter_count;
  const sinewright_parameter *parameters;
  /* Power-on. The block is zero. 0: ready; anything else: it cannot work with these settings. */
  int32_t (*init)(void *state, const sinewright_settings *settings);
  void (*step)(void *state, const sinewright_inputs *inputs, sinewright_outputs *outputs);
} sinewright_firmware;

/* The first members of a sinewright_firmware. */
#define SINEWRIGHT_FIRMWARE_HEAD                                                                   \
  SINEWRIGHT_FIRMWARE_VERSION, (uint32_t)sizeof(sinewright_settings), (uint32_t)sizeof(sinewright_inputs), \
      (uint32_t)sizeof(sinewright_outputs), (uint32_t)sizeof(sinewright_parameter)

#if defined(__GNUC__)
#define SINEWRIGHT_VISIBLE __attribute__((visibility("default")))
#else
#define SINEWRIGHT_VISIBLE
#endif

/* What a library defines. */
extern SINEWRIGHT_VISIBLE const sinewright_firmware sinewright_this_firmware;

#ifdef __cplusplus
}
#endif

#endif
