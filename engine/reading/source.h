#pragma once

#include <deque>
#include <filesystem>
#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "geometry/mesh_digest.h"
#include "reading/node.h"

namespace sinewright::reading {

/// The texts that a model or scenario is read from: files on disk, or a list of texts, so that a scenario can
/// be run again from its own record. Remembers every text it handed out.
class Source {
 public:
  struct File {
    std::string path;
    std::string text;  ///< verbatim; of an STL file its digest
  };

  /// Reads from the disk.
  Source() = default;

  /// Knows these texts (path, text) only, and never looks at the disk. Paths as a Source from the disk
  /// reports them.
  explicit Source(const std::vector<std::pair<std::string, std::string>>& texts);

  /// The text at `path`, normalised in its spelling only ("a/../b" is "b"). The reference stays valid.
  /// @throws InvalidInput if there is no such file, it is a folder, cannot be read, is larger than 4 MB or is
  /// no UTF-8
  ///         text (binary, another encoding, control characters).
  const File& text(const std::filesystem::path& path);

  /// The text at `path` as nodes of the caller's own; taken apart once, then copied, since a study reads the same files for
  /// every run. @throws InvalidInput as `text` and `parse_document`.
  std::unique_ptr<Node> document(const std::filesystem::path& path);

  /// The STL file at `path`, or its digest among recorded texts; read once. What is handed out for it is the digest.
  /// @throws InvalidInput as `text`, for a file larger than 600 MB; geometry::MeshProblem as geometry::digest_mesh.
  const geometry::MeshDigest& mesh(const std::filesystem::path& path);

  /// Every text handed out so far, each once, in the order of the first use.
  [[nodiscard]] const std::deque<File>& handed_out() const { return handed_out_; }

 private:
  [[nodiscard]] std::string content(const std::string& name, const std::string& what, std::size_t largest) const;

  bool from_disk_ = true;
  std::vector<File> known_;
  std::deque<File> handed_out_;
  std::map<std::string, std::shared_ptr<const Node>> documents_;  // by path
  std::map<std::string, geometry::MeshDigest> meshes_;            // by path
};

}  // namespace sinewright::reading
