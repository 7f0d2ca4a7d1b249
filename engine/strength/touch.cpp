#include "strength/touch.h"

#include <cmath>

#include "quantity/invalid_input.h"
#include "strength/argument.h"

namespace sinewright::strength {

namespace {

double kelvin(double celsius) {
  return celsius + 273.15;
}

void require_contact_time(double contact_time) {
  require_positive(contact_time, "contact time", "s");
}

double one_minute_threshold(TouchSurface surface) {
  switch (surface) {
    case TouchSurface::bare_metal:
      return 51;
    case TouchSurface::ceramic:
      return 56;
    case TouchSurface::plastic:
      return 60;
  }
  throw InvalidInput("the touched surface is unknown\n  needed: bare metal, ceramic or plastic");
}

double burn_threshold_celsius(TouchSurface surface, double contact_time) {
  if (contact_time > 600) return 43;  // 8 h
  if (contact_time > 60) return 48;   // 10 min
  if (surface == TouchSurface::bare_metal) {
    if (contact_time <= 1) return 65;   // band 65 to 70
    if (contact_time <= 10) return 55;  // band 55 to 60
  }
  if (surface == TouchSurface::plastic && contact_time <= 1) return 85;  // band 85 to 93
  return one_minute_threshold(surface);
}

double medical_limit_celsius(bool metal, double contact_time) {
  if (contact_time < 1) return metal ? 74 : 86;
  if (contact_time < 10) return metal ? 56 : 71;
  if (contact_time < 60) return metal ? 51 : 60;
  return 48;
}

}  // namespace

double burn_threshold(TouchSurface surface, double contact_time) {
  require_contact_time(contact_time);
  return kelvin(burn_threshold_celsius(surface, contact_time));
}

double medical_touch_limit(TouchSurface surface, double contact_time) {
  require_contact_time(contact_time);
  if (surface == TouchSurface::ceramic)
    throw InvalidInput(
        "no touch limit of medical equipment is known for ceramic\n  needed: bare metal or plastic");
  return kelvin(medical_limit_celsius(surface == TouchSurface::bare_metal, contact_time));
}

}  // namespace sinewright::strength
