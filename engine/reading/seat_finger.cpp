#include "reading/seat_finger.h"

#include <algorithm>

#include <fmt/format.h>

#include "reading/complaint.h"

namespace sinewright::reading {
namespace {

// A finger's file on its way into the hand.
struct Seated {
  std::string scope;  // "index."
  ModelFile file;

  // A name as the finger's own file writes it.
  [[nodiscard]] std::string own(const std::string& name) const { return name.substr(scope.size()); }
};

template <class T>
std::vector<std::string> own_names(const Seated& finger, const Named<T>& entries) {
  std::vector<std::string> names;
  for (const Entry<T>& entry : entries) names.push_back(finger.own(entry.name));
  return names;
}

template <class T>
auto find_named(Named<T>& entries, const std::string& name) {
  return std::find_if(entries.begin(), entries.end(), [&](const auto& entry) { return entry.name == name; });
}

template <class T>
void append(Named<T>&& from, Named<T>& to) {
  to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

const WrittenPoint* pulley_end(const WrittenCord& cord) {
  const bool driven = !cord.path.empty() && std::holds_alternative<model::PulleyEnd>(cord.path.front().point);
  return driven ? &cord.path.front() : nullptr;
}

// Nothing that stays may hang on what goes.
void check_unused(const Name& left, const std::string& name, const Seated& finger) {
  const auto refuse = [&](const std::string& user) {
    throw not_allowed(*left.node, "a body of the finger's file that nothing else of it needs", user + " needs it");
  };
  for (const Entry<WrittenBody>& body : finger.file.bodies)
    if ((body.value.hinge && body.value.hinge->parent_name.text == name) || (body.value.slide && body.value.slide->parent_name.text == name))
      refuse(fmt::format("the body '{}'", finger.own(body.name)));
  const auto around = [&](const std::optional<std::vector<Name>>& inside, const std::string& user) {
    for (const Name& one : inside.value_or(std::vector<Name>{}))
      if (one.text == name) refuse(fmt::format("'inside' of {}", user));
  };
  for (const Entry<WrittenBody>& body : finger.file.bodies)
    for (const Entry<WrittenOccupied>& thing : body.value.occupies) around(thing.value.inside, thing.node->path());
  for (const Entry<WrittenDrive>& drive : finger.file.drives) {
    if (drive.value.body.text == name) refuse(fmt::format("the drive '{}', which sits in it,", finger.own(drive.name)));
    around(drive.value.inside, fmt::format("the drive '{}'", finger.own(drive.name)));
  }
  for (const Entry<WrittenCord>& cord : finger.file.cords)
    for (const WrittenPoint& point : cord.value.path)
      if (point.in.text == name) refuse(fmt::format("the cord '{}'", finger.own(cord.name)));
}

// The way of the cord that the drive winds begins where the drive really sits.
void lead_cord(const Entry<WrittenPlace>& place, const Entry<WrittenDrive>& drive, const Name& body_before, Seated& finger) {
  const auto cord = std::find_if(finger.file.cords.begin(), finger.file.cords.end(), [&](const auto& entry) {
    const WrittenPoint* end = pulley_end(entry.value);
    return end != nullptr && end->drive.text == drive.name;
  });
  if (cord == finger.file.cords.end()) {
    if (place.value.lead)
      throw not_allowed(*place.node->find("lead"), "no lead for a drive that winds no cord", "the finger's file has no cord on this drive");
    return;
  }
  if (!place.value.lead) {
    if (place.value.body)
      throw missing(*place.node, "lead", "where the cord leaves the pulley now, and its way to the finger",
                    fmt::format("the drive moves to another body, and the cord '{}' is wound on it", finger.own(cord->name)));
    return;
  }
  const std::vector<WrittenPoint>& lead = *place.value.lead;
  const WrittenPoint& first = lead.front();
  if (!std::holds_alternative<model::PulleyEnd>(first.point))
    throw not_allowed(*first.node, fmt::format("the pulley at the start: {{pulley: {}, at: [...]}}", place.node->key));
  const Node& named = *first.node->find("pulley");
  if (named.text != place.node->key && first.drive.text != drive.name)
    throw not_allowed(named, fmt::format("'{}', the drive whose cord is led here", place.node->key));
  for (std::size_t i = 1; i < lead.size(); ++i)
    if (std::holds_alternative<model::Anchor>(lead[i].point) || std::holds_alternative<model::PulleyEnd>(lead[i].point))
      throw not_allowed(*lead[i].node, "bends and guides after the pulley", "the cord's own path goes on from there");

  WrittenCord& led = cord->value;
  led.in_line = WrittenInLine{lead.size(), body_before, led.path.front().at};
  led.path.erase(led.path.begin());
  led.path.insert(led.path.begin(), lead.begin(), lead.end());
  led.path.front().drive = Name{drive.name, &named};
}

void place_drive(const Entry<WrittenPlace>& place, Seated& finger) {
  const auto drive = find_named(finger.file.drives, finger.scope + place.node->key);
  if (drive == finger.file.drives.end()) throw unknown_name_key(*place.node, "drive", own_names(finger, finger.file.drives));
  const Name before = drive->value.body;
  if (place.value.body) drive->value.body = *place.value.body;
  const bool stays = !place.value.body && !place.value.lead;
  if (!stays || place.value.shaft) drive->value.shaft = place.value.shaft;
  if (!stays || place.value.inside) drive->value.inside = place.value.inside;
  lead_cord(place, *drive, before, finger);
}

void leave_out(const Name& left, Seated& finger) {
  const std::string name = finger.scope + left.node->text;
  const auto body = find_named(finger.file.bodies, name);
  if (body == finger.file.bodies.end()) throw unknown_name(*left.node, "body", own_names(finger, finger.file.bodies));
  for (Entry<WrittenCord>& cord : finger.file.cords) {
    auto& in_line = cord.value.in_line;
    if (!in_line || !in_line->body || in_line->body->text != name) continue;
    // The body goes, the place where its drive sat stays known.
    if (const auto& fixed = body->value.fixed) {
      in_line->at = fixed->at + fixed->rotation * in_line->at;
      in_line->body.reset();
    } else {
      in_line.reset();
    }
  }
  finger.file.bodies.erase(body);
  check_unused(left, name, finger);
}

}  // namespace

void seat_finger(const Entry<WrittenFinger>& seat, ModelFile file, ModelFile& hand) {
  const WrittenFinger& wanted = seat.value;
  if (file.currency != hand.currency)
    throw not_allowed(*seat.node->find("model"), fmt::format("a file whose prices are in '{}', as here", hand.currency),
                      fmt::format("its prices are in '{}'", file.currency));
  Seated finger{seat.name + ".", std::move(file)};
  for (Entry<WrittenBody>& body : finger.file.bodies) {
    if (!body.value.fixed) continue;
    body.value.fixed->at = wanted.at + wanted.turned * body.value.fixed->at;
    body.value.fixed->rotation = wanted.turned * body.value.fixed->rotation;
  }
  for (const Entry<WrittenPlace>& place : wanted.drives) place_drive(place, finger);
  for (const Name& left : wanted.leave_out) leave_out(left, finger);
  if (wanted.supply) {
    finger.file.supplies.clear();
    for (Entry<WrittenDrive>& drive : finger.file.drives) drive.value.supply = *wanted.supply;
  }
  for (Entry<model::BillItem>& item : finger.file.bill)
    item.value.used_for = item.value.used_for.empty() ? seat.name : seat.name + " " + item.value.used_for;

  // How the hand is looked at it says itself; what may touch in a finger the finger's own file knows.
  if (finger.file.packing && !finger.file.packing->may_touch.empty()) {
    if (!hand.packing) hand.packing.emplace();
    const auto gone = [&](const Name& name) {
      return std::any_of(wanted.leave_out.begin(), wanted.leave_out.end(), [&](const Name& left) {
        const std::string body = "bodies." + finger.scope + left.node->text;
        return name.text == body || name.text.starts_with(body + ".");
      });
    };
    for (std::vector<Name>& pair : finger.file.packing->may_touch)
      if (!gone(pair[0]) && !gone(pair[1])) hand.packing->may_touch.push_back(std::move(pair));
  }
  append(std::move(finger.file.materials), hand.materials);
  append(std::move(finger.file.surfaces), hand.surfaces);
  append(std::move(finger.file.friction_pairs), hand.friction_pairs);
  append(std::move(finger.file.bushings), hand.bushings);
  append(std::move(finger.file.lines), hand.lines);
  append(std::move(finger.file.motors), hand.motors);
  append(std::move(finger.file.gearheads), hand.gearheads);
  append(std::move(finger.file.supplies), hand.supplies);
  append(std::move(finger.file.bodies), hand.bodies);
  append(std::move(finger.file.drives), hand.drives);
  append(std::move(finger.file.cords), hand.cords);
  append(std::move(finger.file.bill), hand.bill);
}

}  // namespace sinewright::reading
