#pragma once

#include "record/study_file.h"
#include "study/study.h"

namespace sinewright::study {

/// The whole table as it goes into a file, with its findings; without inputs. In memory: 8 bytes for each number, and each reason once.
[[nodiscard]] record::StudyRecord record_of(const model::Study& study, const StudyTable& table);

}  // namespace sinewright::study
