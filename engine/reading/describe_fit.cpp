#include "reading/describe_fit.h"

#include <algorithm>
#include <span>
#include <string_view>

namespace sinewright::reading {
namespace {

using model::TolerancedSize;

Kind<TolerancedSize> iso_class(std::span<const std::string_view> classes) {
  std::vector<std::pair<std::string, std::string>> choices;
  for (const std::string_view name : classes) choices.emplace_back(name, name);
  const Kind<std::string> class_name = word<std::string>(choices);
  Kind<TolerancedSize> kind;
  kind.shown = {"an ISO 286 class, " + class_name.shown.words, class_name.shown.schema, {}};
  kind.read = [class_name, words = kind.shown.words](const Node& node) -> TolerancedSize {
    const bool number =
        !node.text.empty() && (node.text[0] == '.' || (node.text[0] >= '0' && node.text[0] <= '9'));
    if (number)
      throw not_allowed(node, words,
                        "a size alone has no tolerance: give limits, [1.98 mm, 2.02 mm], or "
                        "{nominal: 2 mm, plus_minus: 0.02 mm}");
    return model::IsoClass{class_name.read(node)};
  };
  return kind;
}

Kind<TolerancedSize> limits() {
  const std::string words = "a list of 2 sizes: smallest, largest";
  return turned_into<TolerancedSize, std::vector<double>>(
      list_of(quantity("m", positive()), words, 2, 2),
      [](const std::vector<double>& sizes, const Node& node) {
        if (sizes[0] > sizes[1])
          throw not_allowed(*node.children[1], "a largest size at or above the smallest");
        return TolerancedSize(model::SizeBetween{sizes[0], sizes[1]});
      });
}

struct WrittenProcess : model::ProcessSize {
  double plus_minus = 0;
  std::vector<double> deviations;
};

Kind<TolerancedSize> process() {
  Record<WrittenProcess> record("process_size", "A size by what a process makes of a nominal size.");
  record.need("nominal", &model::ProcessSize::nominal, quantity("m", positive()), "the size aimed at")
      .one_of("tolerance", "plus_minus", &WrittenProcess::plus_minus, quantity("m", not_negative()),
              "half the width of the tolerance")
      .one_of("tolerance", "deviations", &WrittenProcess::deviations,
              list_of(quantity("m"), "a list of 2 deviations: lower, upper", 2, 2),
              "lower and upper deviation, for instance [-0.3 mm, 0.1 mm]: printed holes come out small")
      .check([](WrittenProcess& value, const Node& node) {
        const Node* deviations = node.find("deviations");
        value.lower_deviation = deviations != nullptr ? value.deviations[0] : -value.plus_minus;
        value.upper_deviation = deviations != nullptr ? value.deviations[1] : value.plus_minus;
        if (value.lower_deviation > value.upper_deviation)
          throw not_allowed(*deviations->children[1], "an upper deviation at or above the lower one");
        if (value.nominal + value.lower_deviation <= 0)
          throw not_allowed(deviations != nullptr ? *deviations->children[0] : *node.find("plus_minus"),
                            "a deviation that leaves a size above 0");
      });
  return turned_into<TolerancedSize, WrittenProcess>(
      record.kind(), [](const WrittenProcess& value, const Node&) { return model::ProcessSize(value); });
}

Kind<TolerancedSize> toleranced(std::span<const std::string_view> classes) {
  const Kind<TolerancedSize> by_class = iso_class(classes), between = limits(), made = process();
  return any_of<TolerancedSize>({{[](const Node& n) { return n.kind == Node::Kind::text; }, by_class},
                                 {[](const Node& n) { return n.kind == Node::Kind::list; }, between},
                                 {[](const Node& n) { return n.kind == Node::Kind::map; }, made}},
                                by_class.shown.words + "; or " + between.shown.words + "; or a map");
}

Kind<WrittenPress> press() {
  using model::PressFit;
  Record<WrittenPress> record("press_fit",
                              "How the pin sits in the outer lugs. Each of the two lugs is like this.");
  record
      .need("hole", &PressFit::hole, toleranced(model::hole_classes),
            "the lug's hole before the pin is in it")
      .need("length", &PressFit::length, quantity("m", positive()), "of the contact in one lug")
      .need("hub_diameter", &PressFit::hub_diameter, quantity("m", positive()),
            "outside diameter of the lug round the hole, where it is thinnest")
      .need("hub_material", &WrittenPress::hub_name, name_of("material"), "of the lugs")
      .need("pin_material", &WrittenPress::pin_name, name_of("material"), "of the pin")
      .need("friction", &WrittenPress::friction, dry_friction(),
            "of the pin in the hole: static for pulling out and turning, kinetic for pressing in")
      .may("remaining_share", &PressFit::remaining_share, number({0, 1, true, false, "above 0, up to 1"}),
           Absent{"not described"}, "of the pressure, after the lug has crept; nylon loses a good part")
      .may("layers", &PressFit::hub_layers, word<model::Layers>({{"along", model::Layers::along}, {"across", model::Layers::across}}),
           Absent{"the weaker of the two"},
           "whether the stress round the hole acts along or across the printed layers: along, if the pin stands across them")
      .may("hub_strength", &PressFit::hub_strength, quantity("Pa", positive()), Absent{"the material's strength"},
           "stress that the lug bears round the hole, where the fit pulls it apart")
      .may("temperature", &WrittenPress::range,
           list_of(quantity("K", positive()), "a list of 2 temperatures: lowest, highest", 2, 2),
           Absent{"20 degC alone"}, "in use; needs thermal_expansion of both materials")
      .check([](WrittenPress& value, const Node& node) {
        value.static_friction = value.friction.static_coefficient;
        value.kinetic_friction = value.friction.kinetic_coefficient;
        if (!value.range) return;
        value.temperature = {(*value.range)[0], (*value.range)[1]};
        if (value.temperature->lower > value.temperature->upper)
          throw not_allowed(*node.find("temperature")->children[1],
                            "a highest temperature at or above the lowest");
      });
  return record.kind();
}

void check_size(const TolerancedSize& size, double diameter, const Node& node) {
  if (std::holds_alternative<model::IsoClass>(size)) {
    // A nanometre for the rounding of a conversion of units.
    if (diameter > model::largest_iso_size + 1e-9)
      throw not_allowed(node, "limits or a process tolerance, for a pin above 10 mm",
                        "classes are known up to a nominal size of 10 mm");
    return;
  }
  double lower = 0, upper = 0;
  if (const auto* between = std::get_if<model::SizeBetween>(&size)) {
    lower = between->lower;
    upper = between->upper;
  } else {
    const auto& process = std::get<model::ProcessSize>(size);
    lower = process.nominal + process.lower_deviation;
    upper = process.nominal + process.upper_deviation;
  }
  // No fit is that wide: a slip of the decimal point, or the size of another part.
  if (lower < 0.5 * diameter || upper > 1.5 * diameter)
    throw not_allowed(node, "sizes between half and one and a half of the pin's diameter",
                      "sizes are diameters of the pin and of its holes");
}

}  // namespace

Kind<WrittenFit> fit() {
  using model::Fit;
  Record<WrittenFit> record("fit",
                            "Sizes of a hinge's pin and of its holes, at 20 °C. Classes count on the pin's "
                            "diameter.");
  record.need("pin", &Fit::pin, toleranced(model::shaft_classes), "the pin")
      .may("running_hole", &Fit::running_hole, toleranced(model::hole_classes), Absent{"not described"},
           "the hole of the inner lug, in which the pin turns; goes before the pin's radial_clearance")
      .may("press", &WrittenFit::written_press, press(), Absent{"not described"}, "the pin in the outer lugs")
      .check([](WrittenFit& value, const Node& node) {
        if (!value.running_hole && !value.written_press)
          throw missing(node, "running_hole", "'running_hole', or 'press', or both: a pin alone is no fit");
      });
  return record.kind();
}

void check_sizes(const WrittenFit& fit, double diameter, const Node& node) {
  check_size(fit.pin, diameter, *node.find("pin"));
  if (fit.running_hole) check_size(*fit.running_hole, diameter, *node.find("running_hole"));
  if (!fit.written_press) return;
  const Node& press_node = *node.find("press");
  check_size(fit.written_press->hole, diameter, *press_node.find("hole"));
  if (fit.written_press->hub_diameter <= diameter)
    throw not_allowed(*press_node.find("hub_diameter"), "above the pin's diameter",
                      "the lug goes round the pin");
}

}  // namespace sinewright::reading
