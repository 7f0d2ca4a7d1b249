#include "record/writer.h"

#include <fcntl.h>
#include <sys/file.h>

#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <optional>

#include "record/settle.h"
#include "record/whole_file.h"

namespace sinewright::record {
namespace {

using Clock = std::chrono::steady_clock;

constexpr std::size_t kBufferRows = 1024;
// Half of the promised second, so that a slow disk or a busy machine does not break the promise.
constexpr auto kFlushInterval = std::chrono::milliseconds(500);

// HDF5 locks a file that it writes; a partial file that is locked belongs to a living run.
void require_free(const std::filesystem::path& partial) {
  std::error_code error;
  if (std::filesystem::is_directory(partial, error)) throw CallFailure("it is a directory");
  const Descriptor old(partial, O_RDONLY);
  if (old.number() >= 0 && flock(old.number(), LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK)
    throw CallFailure("another run is writing it; give this one another name");
}

}  // namespace

std::filesystem::path partial_path(const std::filesystem::path& file) {
  return std::filesystem::path(file).replace_extension(".partial.h5");
}

struct Writer::Implementation {
  std::filesystem::path file, partial;
  std::vector<Channel> channels;
  Inputs inputs;
  std::size_t row_width = 0;

  std::optional<PartialFile> store;
  std::vector<std::vector<double>> columns;  // buffer: /time, then each channel, row-major
  std::size_t n_buffered = 0;
  std::vector<Event> events;                 // buffer
  double committed_time = 0;                 // of the last row in the file [s]
  Clock::time_point last_flush = Clock::now();
  std::string failure;                       // message of the failure after which nothing is written any more

  // Runs `act`; a failure names the file and what is safe, and stays.
  template <class Act>
  void guarded(const std::filesystem::path& target, Act&& act) {
    if (!failure.empty()) throw RecordError(failure);
    const QuietErrors quiet;
    try {
      act();
    } catch (const std::exception& error) {  // CallFailure, or memory that ran out
      failure = fmt::format("cannot write the record {}: {}", target.string(), error.what());
      if (store && store->n_rows() > 0)
        failure += fmt::format("\n  kept: {} rows up to t = {} s in {}", store->n_rows(), committed_time,
                               partial.string());
      failure += "\n  hint: look for free space and write permission there, or name another place";
      throw RecordError(failure);
    }
  }

  void commit() {
    if (n_buffered > 0 || !events.empty()) {
      store->commit(columns, n_buffered, events);
      if (n_buffered > 0) committed_time = columns[0][n_buffered - 1];
      n_buffered = 0;
      events.clear();
    }
    last_flush = Clock::now();
  }

  [[nodiscard]] bool due() const {
    return n_buffered == kBufferRows || Clock::now() - last_flush >= kFlushInterval;
  }
};

Writer::Writer(std::filesystem::path file, std::vector<Channel> channels, const Inputs& inputs)
    : implementation_(std::make_unique<Implementation>()) {
  auto& self = *implementation_;
  self.file = std::move(file);
  self.partial = partial_path(self.file);
  self.channels = std::move(channels);
  self.inputs = inputs;
  self.columns.emplace_back(kBufferRows);
  for (const auto& channel : self.channels) {
    self.columns.emplace_back(kBufferRows * static_cast<std::size_t>(channel.width()));
    self.row_width += static_cast<std::size_t>(channel.width());
  }
  self.guarded(self.file, [&] {
    require_usable(self.channels);
    std::error_code error;
    if (!self.file.has_filename()) throw CallFailure("it has no file name");
    if (std::filesystem::is_directory(self.file, error)) throw CallFailure("it is a directory");
  });
  self.guarded(self.partial, [&] {
    require_free(self.partial);
    make_then_move(packing_path(self.file), self.partial,
                   [&](const auto& path) { self.store.emplace(path, self.channels, self.inputs); });
  });
  self.last_flush = Clock::now();
}

Writer::Writer(Writer&&) noexcept = default;
Writer& Writer::operator=(Writer&& other) noexcept {
  Writer old(std::move(*this));  // flushes what this one still held
  implementation_ = std::move(other.implementation_);
  return *this;
}

Writer::~Writer() {
  if (!implementation_ || !implementation_->store) return;
  try {
    flush();
  } catch (const std::exception&) {
    // Nobody to tell; what was flushed before is in the partial file.
  }
}

void Writer::append(double time, std::span<const double> row) {
  auto& self = *implementation_;
  if (row.size() != self.row_width)
    throw std::invalid_argument(fmt::format("a row of {} values for channels of {} columns", row.size(), self.row_width));
  if (!self.failure.empty() || !self.store) return flush();  // throws
  self.columns[0][self.n_buffered] = time;
  const double* from = row.data();
  for (std::size_t i = 0; i < self.channels.size(); ++i) {
    const auto width = static_cast<std::size_t>(self.channels[i].width());
    std::copy_n(from, width, self.columns[i + 1].begin() + static_cast<std::ptrdiff_t>(self.n_buffered * width));
    from += width;
  }
  ++self.n_buffered;
  if (self.due()) flush();
}

void Writer::event(const Event& event) {
  auto& self = *implementation_;
  if (!self.failure.empty() || !self.store) return flush();  // throws
  self.events.push_back(event);
  if (self.due()) flush();
}

void Writer::flush() {
  auto& self = *implementation_;
  self.guarded(self.partial, [&] {
    if (!self.store) throw CallFailure("it is finished already");
    self.commit();
  });
}

void Writer::finish(const std::vector<SummaryValue>& summary, const std::vector<Verdict>& verdicts,
                    const std::string& outcome, const Margins& margins) {
  flush();
  auto& self = *implementation_;
  self.guarded(self.file, [&] {
    make_then_move(packing_path(self.file), self.file, [&](const auto& path) {
      write_whole_file(path, *self.store, self.channels, self.inputs, summary, verdicts, margins, outcome);
      to_disk(path, O_RDONLY);
    });
    to_disk(folder_of(self.file), O_RDONLY | O_DIRECTORY);
    self.store.reset();
    std::error_code ignored;  // a partial file that cannot be removed harms nobody
    std::filesystem::remove(self.partial, ignored);
  });
}

}  // namespace sinewright::record
