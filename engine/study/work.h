#pragma once

#include <atomic>
#include <functional>
#include <string>
#include <vector>

#include "study/design_result.h"
#include "study/design_runs.h"
#include "study/ranks.h"

namespace sinewright::study {

class Followers;

/// A design that is still to be run.
struct Task {
  long long index = 0;
  std::vector<std::string> changes;
};

/// What one hears who asks for work.
enum class Reply { task, wait, end };
/// Gives the next task. Called by one thread at a time.
using NextTask = std::function<Reply(Task& task)>;
/// Takes a finished design; the order is that of finishing. Called by one thread at a time.
using TakeResult = std::function<void(DesignResult result)>;

/// Runs designs on several threads, and on those of all followers that have joined, until `next` says that there is no more or `stop`
/// is set; designs under way are then still finished.
/// @param threads    of this process; 0: as many as the machine has.
/// @param followers  null: alone.
/// @throws what `take` throws, after which nothing is begun any more.
void work_off(const Bench& bench, int threads, const NextTask& next, const TakeResult& take, const std::atomic<bool>& stop,
              Followers* followers = nullptr);

/// The leader's hold on the other processes, for as long as it lives.
class Followers {
 public:
  explicit Followers(Ranks& ranks) : ranks_(ranks) {}
  /// Lets the followers go, once their designs are finished.
  ~Followers();
  Followers(const Followers&) = delete;
  Followers& operator=(const Followers&) = delete;

  /// Waits until every follower has told its fingerprint.
  /// @throws InvalidInput if one has another, or could not begin: its machine has other files or another version.
  void greet(const std::string& fingerprint);
  [[nodiscard]] Ranks& ranks() { return ranks_; }

 private:
  Ranks& ranks_;
};

/// The follower's side: tells its fingerprint, runs what the leader gives it on its threads, returns when the leader lets it go.
void follow(Ranks& ranks, const std::string& fingerprint, const Bench& bench, int threads);
/// A follower that cannot even begin says why, and waits to be let go.
void decline(Ranks& ranks, const std::string& why);

}  // namespace sinewright::study
