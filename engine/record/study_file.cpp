#include "record/study_file.h"

#include <fmt/format.h>

#include "record/layout.h"
#include "record/small_data.h"

namespace sinewright::record {
namespace {

constexpr int kStudyVersion = 1;
constexpr hsize_t kChunkRows = 16384;

// One value for each row, compressed.
Handle rows_data(hid_t place, const std::string& name, std::size_t n, hid_t type, hid_t memory_type, const void* values) {
  const Handle properties = dataset_properties();
  const hsize_t size = n, chunk = std::min<hsize_t>(kChunkRows, std::max<hsize_t>(1, n));
  check(H5Pset_chunk(properties.id(), 1, &chunk), name);
  check(H5Pset_shuffle(properties.id()), name);
  check(H5Pset_deflate(properties.id(), 4), name);
  const Handle space = own(H5Screate_simple(1, &size, nullptr), H5Sclose, name);
  Handle dataset = own(H5Dcreate2(place, name.c_str(), type, space.id(), H5P_DEFAULT, properties.id(), H5P_DEFAULT), H5Dclose, name);
  write_rows(dataset.id(), 0, n, 1, values, memory_type);
  return dataset;
}

template <class T>
std::vector<T> rows_at(hid_t place, const std::string& name, hid_t memory_type) {
  const Handle dataset = open_dataset(place, name);
  const auto size = extent(dataset.id());
  if (size.size() != 1) throw CallFailure(name + ": one dimension is needed");
  std::vector<T> values(size[0]);
  read_rows(dataset.id(), 0, size[0], 1, values.data(), memory_type);
  return values;
}

void write_columns(hid_t file, const char* name, const std::vector<StudyColumn>& columns) {
  const Handle group = make_group(file, name);
  for (const StudyColumn& column : columns) {
    const Handle dataset = rows_data(group.id(), encode_name(column.name), column.values.size(), H5T_IEEE_F64LE, H5T_NATIVE_DOUBLE, column.values.data());
    describe(dataset.id(), column.unit, column.description);
    write_attribute(dataset.id(), "shown_in", column.shown_in);
    if (!column.options.empty()) write_attribute(dataset.id(), "options", column.options);
  }
}

std::vector<StudyColumn> read_columns(hid_t file, const char* name, std::size_t rows) {
  const Handle group = open_group(file, name);
  std::vector<StudyColumn> columns;
  for (const std::string& link : names_in(group.id())) {
    const Handle dataset = open_dataset(group.id(), link);
    StudyColumn column{decode_name(link), read_text_attribute(dataset.id(), "units"), read_text_attribute(dataset.id(), "shown_in"),
                       read_text_attribute(dataset.id(), "description"), {}, rows_at<double>(group.id(), link, H5T_NATIVE_DOUBLE)};
    if (has_attribute(dataset.id(), "options")) column.options = read_texts_attribute(dataset.id(), "options");
    if (column.values.size() != rows) throw CallFailure(column.name + ": the columns differ in length");
    columns.push_back(std::move(column));
  }
  return columns;
}

std::string requirement_name(std::size_t i) {
  return fmt::format("requirement_{:03}", i);
}

void write_numbers(hid_t file, const char* name, const std::vector<SummaryValue>& values) {
  const Handle group = make_group(file, name);
  for (const SummaryValue& value : values) number(group.id(), encode_name(value.key), value.value, value.unit, value.description);
}

void write_all(hid_t file, const StudyRecord& record) {
  write_attribute(file, "format", kStudyFormat);
  write_attribute(file, "format_version", static_cast<long long>(kStudyVersion));
  write_attribute(file, "name", record.name);
  write_attribute(file, "about", record.about);
  write_attribute(file, "kind", record.kind);
  write_attribute(file, "points", record.points);
  write_attribute(file, "seed", static_cast<long long>(record.seed));
  write_attribute(file, "base", static_cast<long long>(record.base));
  write_attribute(file, "levels", static_cast<long long>(record.levels));
  write_attribute(file, "rows", static_cast<long long>(record.rows()));
  write_attribute(file, "designs", static_cast<long long>(record.designs));
  write_attribute(file, "chosen", record.chosen ? static_cast<long long>(*record.chosen) : -1);
  std::vector<std::string> minimise, maximise;
  for (const auto& [outcome, more] : record.goals) (more ? maximise : minimise).push_back(outcome);
  write_attribute(file, "minimise", minimise);
  write_attribute(file, "maximise", maximise);
  write_inputs(file, record.inputs);
  number(file, "confidence", record.confidence, "1", "of all intervals");
  write_columns(file, "varied", record.varied);
  write_columns(file, "made", record.made);
  write_columns(file, "outcomes", record.outcomes);
  {
    const Handle group = make_group(file, "requirements");
    for (std::size_t i = 0; i < record.requirements.size(); ++i) {
      const StudyRequirement& one = record.requirements[i];
      const Handle place = make_group(group.id(), requirement_name(i));
      write_attribute(place.id(), "quantity", one.quantity);
      write_attribute(place.id(), "demand", one.demand);
      number(place.id(), "at_least", one.at_least, "1", "lower bound in the unit of the outcome; NaN: none");
      number(place.id(), "at_most", one.at_most, "1", "upper bound in the unit of the outcome; NaN: none");
      const Handle dataset = rows_data(place.id(), "shortfall", one.shortfalls.size(), H5T_IEEE_F64LE, H5T_NATIVE_DOUBLE, one.shortfalls.data());
      describe(dataset.id(), "1", "what is missing as a share of the bound; 0: met; infinite: the outcome has no value");
    }
  }
  {
    const Handle dataset = rows_data(file, "state", record.rows(), H5T_STD_I8LE, H5T_NATIVE_INT8, record.states.data());
    describe(dataset.id(), "1", "how the row ended: an index into 'states'");
    write_attribute(dataset.id(), "states", std::vector<std::string>{"met", "missed", "invalid", "stopped"});
  }
  {
    const Handle dataset = rows_data(file, "reason", record.rows(), H5T_STD_U32LE, H5T_NATIVE_UINT32, record.reasons.data());
    describe(dataset.id(), "1", "why it is not 'met': an index into reason_texts");
  }
  {
    const Handle type = string_type();
    const hsize_t n = record.reason_texts.size();
    const Handle space = own(H5Screate_simple(1, &n, nullptr), H5Sclose, "reason_texts");
    const Handle properties = dataset_properties();
    const Handle dataset =
        own(H5Dcreate2(file, "reason_texts", type.id(), space.id(), H5P_DEFAULT, properties.id(), H5P_DEFAULT), H5Dclose, "reason_texts");
    std::vector<const char*> pointers;
    for (const std::string& text : record.reason_texts) pointers.push_back(text.c_str());
    check(H5Dwrite(dataset.id(), type.id(), H5S_ALL, H5S_ALL, H5P_DEFAULT, pointers.data()), "reason_texts");
    describe(dataset.id(), "1", "each reason once");
  }
  {
    const Handle dataset = rows_data(file, "best", record.best.size(), H5T_STD_U64LE, H5T_NATIVE_UINT64, record.best.data());
    describe(dataset.id(), "1", "rows of an optimisation: the optimum, or the front by rising first goal");
  }
  {
    const Handle group = make_group(file, "drawn");
    for (std::size_t i = 0; i < record.outcomes.size(); ++i)
      number(group.id(), encode_name(record.outcomes[i].name), record.drawn[i], record.outcomes[i].unit, "of the files as they are");
  }
  write_numbers(file, "findings", record.findings);
}

StudyRecord read_all(hid_t file) {
  StudyRecord record;
  record.inputs = read_inputs(file);
  record.name = read_text_attribute(file, "name");
  record.about = read_text_attribute(file, "about");
  record.kind = read_text_attribute(file, "kind");
  record.points = read_text_attribute(file, "points");
  record.seed = static_cast<std::uint64_t>(read_number_attribute(file, "seed"));
  record.base = static_cast<std::uint64_t>(read_number_attribute(file, "base"));
  record.levels = static_cast<std::uint64_t>(read_number_attribute(file, "levels"));
  record.designs = static_cast<std::uint64_t>(read_number_attribute(file, "designs"));
  if (const long long chosen = read_number_attribute(file, "chosen"); chosen >= 0) record.chosen = static_cast<std::uint64_t>(chosen);
  for (const std::string& outcome : read_texts_attribute(file, "minimise")) record.goals.emplace_back(outcome, false);
  for (const std::string& outcome : read_texts_attribute(file, "maximise")) record.goals.emplace_back(outcome, true);
  record.confidence = number_at(file, "confidence");
  record.states = rows_at<RowState>(file, "state", H5T_NATIVE_INT8);
  const std::size_t rows = record.rows();
  if (record.designs > rows) throw CallFailure("designs: more than there are rows");
  record.reasons = rows_at<std::uint32_t>(file, "reason", H5T_NATIVE_UINT32);
  {
    const Handle dataset = open_dataset(file, "reason_texts");
    const auto size = extent(dataset.id());
    if (size.size() != 1) throw CallFailure("reason_texts: one dimension is needed");
    record.reason_texts = read_texts(dataset.id(), size[0]);
  }
  record.varied = read_columns(file, "varied", rows);
  record.made = read_columns(file, "made", rows);
  record.outcomes = read_columns(file, "outcomes", rows);
  {
    const Handle group = open_group(file, "requirements");
    for (const std::string& link : names_in(group.id())) {
      const Handle place = open_group(group.id(), link);
      record.requirements.push_back({read_text_attribute(place.id(), "quantity"), read_text_attribute(place.id(), "demand"), number_at(place.id(), "at_least"),
                                     number_at(place.id(), "at_most"), rows_at<double>(place.id(), "shortfall", H5T_NATIVE_DOUBLE)});
    }
  }
  record.best = rows_at<std::uint64_t>(file, "best", H5T_NATIVE_UINT64);
  {
    const Handle group = open_group(file, "drawn");
    for (const StudyColumn& outcome : record.outcomes) record.drawn.push_back(number_at(group.id(), encode_name(outcome.name)));
  }
  const Handle group = open_group(file, "findings");
  for (const std::string& link : names_in(group.id())) {
    const Handle dataset = open_dataset(group.id(), link);
    record.findings.push_back({decode_name(link), number_at(group.id(), link), read_text_attribute(dataset.id(), "units"),
                               read_text_attribute(dataset.id(), "description")});
  }
  // What indexes into what is there, so that a reader need not ask.
  bool sound = record.reasons.size() == rows && (!record.chosen || *record.chosen < rows);
  for (const std::uint32_t reason : record.reasons) sound = sound && reason < record.reason_texts.size();
  for (const std::uint64_t row : record.best) sound = sound && row < rows;
  for (const auto& requirement : record.requirements) sound = sound && requirement.shortfalls.size() == rows;
  if (!sound) throw CallFailure("its parts do not fit together");
  return record;
}

}  // namespace

void write_study(const std::filesystem::path& path, const StudyRecord& record) {
  write_at_once(path, [&](hid_t file) { write_all(file, record); });
}

bool is_study(const std::filesystem::path& path) {
  return has_format(path, kStudyFormat);
}

StudyRecord read_study(const std::filesystem::path& path) {
  StudyRecord record;
  guarded(path, "read", [&] {
    const Handle file = open_to_read(path);
    require_format(file.id(), kStudyFormat, kStudyVersion, "the table of a study");
    record = read_all(file.id());
  });
  return record;
}

}  // namespace sinewright::record
