// The tables of a record made by hand.

#include "export/tables.h"

#include <cmath>
#include <limits>

#include <catch2/catch.hpp>

namespace {

using namespace sinewright;
using namespace sinewright::exporting;
using Catch::Matchers::Contains;

record::Record made() {
  record::Record r;
  r.time = {0, 0.25};
  r.channels = {{"/joints/MCP/angle", "radian", "angle", {}},
                {"/cords/flexor/tension", "N", "tension", {"pulley", "tip"}},
                {"/cords/=cmd()/tension", "N", "of a hostile name", {"a,b"}},
                {"/drives/flexor/torque", "N m", "torque", {}},
                {"/drives/flexor/winding_temperature", "K", "temperature", {}}};
  r.data = {{0, std::atan(1.0)}, {1, 2, 3, 4}, {5, std::nan("")}, {0.001, -0.0025}, {293.15, 313.15}};
  r.events = {{0.1, "contact", "=1+1", "say \"a, b\""}};
  r.summary = {{"joint_angle.MCP", std::acos(-1.0), "rad", "largest"}, {"never", std::nan(""), "s", "did not occur"}};
  r.verdicts = {{"grip_force", "at least 5 N", 4.5, false, "N"}};
  r.margins.joints = {"MCP"};
  r.margins.values = {{"pin_bending.MCP", "pin bent at MCP", 500e6, 250e6, "Pa", 2, 0.25, "force 3 N", std::nan(""), "", {0.5}},
                      {"touch", "touch", 42, 0, "K", std::numeric_limits<double>::infinity(), 0, "none", 0.125, "then", {0}}};
  r.margins.not_checked = {{"collar.flexor", "collar", {"a.key", "b.key"}}};
  r.outcome = "complete";
  return r;
}

std::string series(const record::Record& r, const std::vector<std::string>& chosen, Units units = Units::si) {
  Csv csv(',');
  write_series(csv, r, chosen_channels(r, chosen), units);
  return csv.take();
}

TEST_CASE("tables: the series have a heading with name and unit, and a row an instant") {
  CHECK(series(made(), {}) ==
        "time [s],/joints/MCP/angle [radian],/cords/flexor/tension:pulley [N],/cords/flexor/tension:tip [N],"
        "\"/cords/=cmd()/tension:a,b [N]\",/drives/flexor/torque [N m],/drives/flexor/winding_temperature [K]\r\n"
        "0,0,1,2,5,0.001,293.15\r\n"
        "0.25,0.7853981633974483,3,4,,-0.0025,313.15\r\n");
}

TEST_CASE("tables: for display, angles are degrees, torques N·mm, temperatures °C") {
  CHECK(series(made(), {"/joints", "/drives"}, Units::display) ==
        "\xEF\xBB\xBFtime [s],/joints/MCP/angle [deg],/drives/flexor/torque [N·mm],/drives/flexor/winding_temperature [°C]\r\n"
        "0,0,1,20\r\n"
        "0.25,45,-2.5,40\r\n");
}

TEST_CASE("tables: data sets are chosen by path, group or pattern, each once, in the record's order") {
  const auto r = made();
  using List = std::vector<std::size_t>;
  CHECK(chosen_channels(r, {}) == List{0, 1, 2, 3, 4});
  CHECK(chosen_channels(r, {"/drives/flexor/torque", "joints/MCP/angle"}) == List{0, 3});
  CHECK(chosen_channels(r, {"/cords", "cords/flexor/"}) == List{1, 2});
  CHECK(chosen_channels(r, {"*/tension", "*temperature"}) == List{1, 2, 4});
  CHECK(chosen_channels(r, {"/cords/=cmd()"}) == List{2});
  CHECK_THROWS_WITH(chosen_channels(r, {"/cord"}), Contains("--data '/cord'"));  // no group of that name, though a name begins so
  CHECK_THROWS_WITH(chosen_channels(r, {"/joints/MCP/angel"}), Contains("nearest is '/joints/MCP/angle'"));
  CHECK(chosen_channels(r, {"/"}) == List{0, 1, 2, 3, 4});
}

TEST_CASE("tables: events, summary and requirements are written with their texts as texts") {
  const auto r = made();
  Csv events(','), summary(','), shown(','), requirements(';');
  write_events(events, r);
  CHECK(events.take() == "time [s],kind,subject,detail\r\n0.1,contact,'=1+1,\"say \"\"a, b\"\"\"\r\n");
  write_summary(summary, r, Units::si);
  CHECK(summary.take() == "key,value,unit,description\r\njoint_angle.MCP,3.141592653589793,rad,largest\r\nnever,,s,did not occur\r\n");
  write_summary(shown, r, Units::display);
  CHECK_THAT(shown.take(), Contains("joint_angle.MCP,180,deg,largest\r\n"));
  write_requirements(requirements, r, Units::si);
  CHECK(requirements.take() == "quantity;demand;value;unit;met\r\ngrip_force;at least 5 N;4.5;N;no\r\n");
}

TEST_CASE("tables: the margins list what is not checked as well, and a rise of temperature stays in kelvins") {
  Csv csv(',');
  write_margins(csv, made(), Units::display);
  CHECK(csv.take() ==
        "name,check,margin,capacity,demand,unit,time [s],load,first below 1 [s],load then,posture MCP [deg],not checked: missing keys\r\n"
        "pin_bending.MCP,pin bent at MCP,2,500,250,MPa,0.25,force 3 N,,,28.6478897565,\r\n"
        "touch,touch,inf,42,0,K,0,none,0.125,then,0,\r\n"
        "collar.flexor,collar,,,,,,,,,,\"a.key; b.key\"\r\n");
}

}  // namespace
