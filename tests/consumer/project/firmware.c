#include <drive/sinewright_firmware.h>

static int32_t init(void *state, const sinewright_settings *settings) {
  (void)state;
  return settings->period > 0 ? 0 : 1;
}

static void step(void *state, const sinewright_inputs *in, sinewright_outputs *out) {
  (void)state;
  out->mode = SINEWRIGHT_DRIVE_VOLTAGE;
  out->drive = in->set_point - in->angle;
}

SINEWRIGHT_VISIBLE const sinewright_firmware sinewright_this_firmware = {SINEWRIGHT_FIRMWARE_HEAD, "consumer", 0, 0, 0, init, step};
