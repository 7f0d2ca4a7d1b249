/* Firmware that does one thing wrong, chosen by FAULT when it is compiled; and an open-loop one that does as it is asked. */
#include "sinewright_firmware.h"

enum { NONE, VERSION, SIZES, NO_STEP, HUGE_STATE, REFUSES, NOT_A_NUMBER, BAD_MODE, BAD_LIMIT, BAD_TOLD };

static const sinewright_parameter parameters[] = {{"mode", "1", SINEWRIGHT_DRIVE_VOLTAGE, 0}, {"drive", "1", 0, 0}, {"limit", "A", 0, 0}};

typedef struct {
  double mode, drive, limit;
} asked;

static int32_t init(void *state, const sinewright_settings *settings) {
  asked *a = (asked *)state;
  a->mode = settings->parameter[0];
  a->drive = settings->parameter[1];
  a->limit = settings->parameter[2];
  return FAULT == REFUSES ? 42 : 0;
}

static void step(void *state, const sinewright_inputs *in, sinewright_outputs *out) {
  const asked *a = (const asked *)state;
  out->mode = FAULT == BAD_MODE ? 9 : (int32_t)a->mode;
  out->drive = a->drive;
  out->current_limit = FAULT == BAD_LIMIT ? -1 : a->limit;
  if (FAULT == NOT_A_NUMBER && in->sample == 5) out->drive = (in->time - in->time) / (in->time - in->time);
  if (FAULT == BAD_TOLD) out->told[2] = 1 / in->set_point_rate;
}

#ifdef OTHER_NAME
#define sinewright_this_firmware another_name
extern const sinewright_firmware another_name;
#endif
SINEWRIGHT_VISIBLE const sinewright_firmware sinewright_this_firmware = {
    FAULT == VERSION ? SINEWRIGHT_FIRMWARE_VERSION + 1 : SINEWRIGHT_FIRMWARE_VERSION,
    sizeof(sinewright_settings),
    FAULT == SIZES ? sizeof(sinewright_inputs) + 8 : sizeof(sinewright_inputs),
    sizeof(sinewright_outputs),
    sizeof(sinewright_parameter),
    "faulty",
    FAULT == HUGE_STATE ? 0x7fffffffu : sizeof(asked),
    3,
    parameters,
    init,
    FAULT == NO_STEP ? 0 : step};
