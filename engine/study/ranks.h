#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace sinewright::study {

/// The processes of one launch by MPI, on one machine or many, numbered from 0; a process that no launcher started, or one of an
/// engine built without MPI, is alone. Messages between two processes arrive in the order in which they were sent.
class Ranks {
 public:
  /// Joins the others. Once in a process.
  Ranks();
  /// Waits for the others to leave as well.
  ~Ranks();
  Ranks(const Ranks&) = delete;
  Ranks& operator=(const Ranks&) = delete;

  [[nodiscard]] int number() const { return number_; }
  [[nodiscard]] int count() const { return count_; }
  [[nodiscard]] bool leads() const { return number_ == 0; }

  struct Message {
    int from = 0;
    int kind = 0;
    std::string text;
  };
  /// From one thread at a time, as `receive`. @param kind  0 or more.
  void send(int to, int kind, std::string_view text);
  /// What has arrived, if anything has; does not wait.
  [[nodiscard]] std::optional<Message> receive();
  /// Ends all processes at once: for what cannot be told to the others any more.
  [[noreturn]] void abandon();

 private:
  int number_ = 0;
  int count_ = 1;
};

}  // namespace sinewright::study
