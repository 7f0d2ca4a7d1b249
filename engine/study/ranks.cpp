#include "study/ranks.h"

#include <cstdlib>
#include <stdexcept>

#define OMPI_SKIP_MPICXX 1
#include <mpi.h>

namespace sinewright::study {

namespace {

// A process that joins alone waits half a second for nothing, so that only one that was launched joins.
bool launched() {
  for (const char* name : {"OMPI_COMM_WORLD_SIZE", "PMI_SIZE", "PMIX_RANK"})
    if (std::getenv(name) != nullptr) return true;
  return false;
}

}  // namespace

Ranks::Ranks() {
  if (!launched()) return;
  int given = 0;
  MPI_Init_thread(nullptr, nullptr, MPI_THREAD_SERIALIZED, &given);
  if (given < MPI_THREAD_SERIALIZED) throw std::runtime_error("this MPI cannot be used by a program with threads");
  MPI_Comm_rank(MPI_COMM_WORLD, &number_);
  MPI_Comm_size(MPI_COMM_WORLD, &count_);
}

Ranks::~Ranks() {
  int joined = 0, left = 0;
  MPI_Initialized(&joined);
  MPI_Finalized(&left);
  if (joined && !left) MPI_Finalize();
}

void Ranks::send(int to, int kind, std::string_view text) {
  MPI_Send(text.data(), static_cast<int>(text.size()), MPI_CHAR, to, kind, MPI_COMM_WORLD);
}

std::optional<Ranks::Message> Ranks::receive() {
  if (count_ == 1) return std::nullopt;
  int there = 0;
  MPI_Status status;
  MPI_Iprobe(MPI_ANY_SOURCE, MPI_ANY_TAG, MPI_COMM_WORLD, &there, &status);
  if (!there) return std::nullopt;
  int size = 0;
  MPI_Get_count(&status, MPI_CHAR, &size);
  Message message{status.MPI_SOURCE, status.MPI_TAG, std::string(static_cast<std::size_t>(size), '\0')};
  MPI_Recv(message.text.data(), size, MPI_CHAR, message.from, message.kind, MPI_COMM_WORLD, MPI_STATUS_IGNORE);
  return message;
}

void Ranks::abandon() {
  int joined = 0;
  MPI_Initialized(&joined);
  if (joined) MPI_Abort(MPI_COMM_WORLD, 3);
  std::abort();
}

}  // namespace sinewright::study
