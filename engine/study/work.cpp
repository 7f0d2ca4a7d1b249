#include "study/work.h"

#include <chrono>
#include <mutex>
#include <thread>

#include <fmt/format.h>

#include "quantity/invalid_input.h"
#include "study/parallel.h"

namespace sinewright::study {

namespace {

// Between a follower and the leader. Every ask gets one answer: task, wait or end.
enum Kind : int { hello, trouble, ask, result, task, wait, end };

constexpr auto kPause = std::chrono::milliseconds(1);       // of a thread that has nothing to do
constexpr auto kListening = std::chrono::microseconds(200);  // of the leader between two looks at its mail

// Texts with a zero byte after each, which none of them holds.
std::string packed(const Task& task) {
  std::string text = fmt::format("{}", task.index);
  text += '\0';
  for (const std::string& change : task.changes) text += change, text += '\0';
  return text;
}

Task unpacked(const std::string& text) {
  std::vector<std::string> parts;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find('\0', at);
    parts.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  Task task{std::stoll(parts.at(0)), {}};
  task.changes.assign(parts.begin() + 1, parts.end());
  return task;
}

Ranks::Message await(Ranks& ranks) {
  for (;;) {
    if (auto message = ranks.receive()) return *std::move(message);
    std::this_thread::sleep_for(kListening);
  }
}

// Where tasks are handed out and results taken in, by one at a time.
class Desk {
 public:
  Desk(const NextTask& next, const TakeResult& take, const std::atomic<bool>& stop) : next_(next), take_(take), stop_(stop) {}
  Reply next(Task& task) {
    const std::scoped_lock lock(mutex_);
    // What cannot be taken in, such as on a full disk, need not be begun.
    return stop_ || failure_ ? Reply::end : next_(task);
  }
  void take(DesignResult result) {
    const std::scoped_lock lock(mutex_);
    try {
      if (!failure_) take_(std::move(result));
    } catch (...) {
      failure_ = std::current_exception();
    }
  }
  void rethrow() const {
    if (failure_) std::rethrow_exception(failure_);
  }

 private:
  const NextTask& next_;
  const TakeResult& take_;
  const std::atomic<bool>& stop_;
  std::mutex mutex_;
  std::exception_ptr failure_;
};

void run_threads(const Bench& bench, int threads, Desk& desk) {
  const int n = thread_count(threads);
  for_each_index(n, n, [&](int) {
    reading::Source source(bench.texts);
    Task task;
    for (;;) {
      const Reply reply = desk.next(task);
      if (reply == Reply::end) return;
      if (reply == Reply::task)
        desk.take(run_design(bench, source, task.index, task.changes));
      else
        std::this_thread::sleep_for(kPause);
    }
  });
}

// Answers the followers until `over` is set and they have brought all that they took.
void serve(Ranks& ranks, Desk& desk, const std::atomic<bool>& over) {
  int out = 0;  // tasks
  while (!over || out > 0) {
    const auto message = ranks.receive();
    if (!message) {
      std::this_thread::sleep_for(kListening);
      continue;
    }
    if (message->kind == result) {
      --out;
      desk.take(result_from(message->text));
      continue;
    }
    Task given;
    if (desk.next(given) == Reply::task) {
      ++out;
      ranks.send(message->from, task, packed(given));
    } else {
      ranks.send(message->from, wait, "");  // there may be more: an optimisation asks in batches
    }
  }
}

}  // namespace

void work_off(const Bench& bench, int threads, const NextTask& next, const TakeResult& take, const std::atomic<bool>& stop,
              Followers* followers) {
  Desk desk(next, take, stop);
  if (followers == nullptr || followers->ranks().count() == 1) {
    run_threads(bench, threads, desk);
  } else {
    std::atomic<bool> over = false;
    std::exception_ptr failure;
    std::thread server([&] { serve(followers->ranks(), desk, over); });
    try {
      run_threads(bench, threads, desk);
    } catch (...) {
      failure = std::current_exception();
    }
    over = true;
    server.join();
    if (failure) std::rethrow_exception(failure);
  }
  desk.rethrow();
}

void Followers::greet(const std::string& fingerprint) {
  std::string wrong;
  for (int told = 1; told < ranks_.count();) {
    const Ranks::Message message = await(ranks_);
    if (message.kind == ask) {  // one that has said hello asks already
      ranks_.send(message.from, wait, "");
      continue;
    }
    ++told;
    if (!wrong.empty()) continue;
    if (message.kind == trouble)
      wrong = fmt::format("process {} of {} cannot begin: {}", message.from, ranks_.count(), message.text);
    else if (message.text != fingerprint)
      wrong = fmt::format("process {} of {} has other files or another version of sinewright\n  needed: the same on all machines", message.from, ranks_.count());
  }
  if (!wrong.empty()) throw InvalidInput(wrong);
}

Followers::~Followers() {
  for (int left = ranks_.count() - 1; left > 0;) {
    const Ranks::Message message = await(ranks_);
    if (message.kind != ask) continue;  // a hello, or results that nobody waits for any more
    ranks_.send(message.from, end, "");
    --left;
  }
}

void follow(Ranks& ranks, const std::string& fingerprint, const Bench& bench, int threads) {
  ranks.send(0, hello, fingerprint);
  const std::atomic<bool> never = false;
  bool let_go = false;
  const NextTask next = [&](Task& given) {
    if (let_go) return Reply::end;
    ranks.send(0, ask, "");
    const Ranks::Message answer = await(ranks);
    if (answer.kind == task) {
      given = unpacked(answer.text);
      return Reply::task;
    }
    let_go = answer.kind == end;
    return let_go ? Reply::end : Reply::wait;
  };
  work_off(bench, threads, next, [&](const DesignResult& finished) { ranks.send(0, result, line_of(finished)); }, never);
}

void decline(Ranks& ranks, const std::string& why) {
  ranks.send(0, trouble, why);
  for (;;) {
    ranks.send(0, ask, "");
    if (await(ranks).kind == end) return;
    std::this_thread::sleep_for(10 * kPause);
  }
}

}  // namespace sinewright::study
