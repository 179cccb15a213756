#pragma once

#include "app/store/garden_parts.hpp"
#include "app/store/store_error.hpp"

#include <QByteArray>
#include <QString>

#include <functional>
#include <map>
#include <string>
#include <vector>

/// The garden file (docs/garden-file.md): one SQLite file with the garden's parts, its photos and
/// the history of its edits. SQL is named nowhere else. Nothing here waits for a person; errors are
/// thrown as StoreError and leave the file as it was.
namespace app {

/// What a garden file is called: "orchard.underbough".
inline constexpr auto kStoreSuffix = "underbough";

/// One step of history, as undo and redo need it.
struct Step {
    std::int64_t number{}; ///< rises from step to step, never used again
    std::string name;      ///< what the window calls it
    int gesture{};         ///< steps of one drag share it; 0: none
    GardenChange change;
    friend bool operator==(const Step&, const Step&) = default;
};

/// What was done to a garden, oldest first.
struct StepHistory {
    std::vector<Step> steps;
    std::int64_t done{}; ///< number of the last step that stands; later ones were undone. 0: none
    friend bool operator==(const StepHistory&, const StepHistory&) = default;
};

/// Which state of which file. Every edit makes the next; a copy keeps both until it is edited.
struct Edition {
    std::string key; ///< of the file, drawn at random when it was made
    std::int64_t count{};
    friend bool operator==(const Edition&, const Edition&) = default;
};

struct StoredGarden {
    model::Garden garden;
    StepHistory history;
    Edition edition;
    int version{}; ///< of the file's form; older than kStoreVersion: raiseGarden() first
};

/// Photos by the name that the garden calls them; their bytes as they came from the camera.
using Photos = std::map<std::string, QByteArray>;

/// One edit as the file must take it in, whole or not at all.
struct Record {
    GardenChange change;               ///< from the garden in the file to the one that is shown
    std::vector<std::int64_t> dropped; ///< numbers of steps that are no more
    std::vector<Step> written;         ///< new steps, and ones that grew
    std::int64_t done{};
    Photos photos; ///< new ones
};

/// Whether a file is in this form, by its first bytes, whatever it is called.
[[nodiscard]] bool isGardenStore(const QString& path);

/// The same of a file's text.
[[nodiscard]] bool isStoreText(std::string_view bytes);

/// The edition that a file is at.
[[nodiscard]] Edition editionOf(const QString& path);

/// Reads a file of any version up to this program's and leaves it as it is.
[[nodiscard]] StoredGarden loadGarden(const QString& path);

/// Raises an older file to this program's form, after copying it beside itself.
/// \returns the copy's path; empty when the file was new enough
[[nodiscard]] QString raiseGarden(const QString& path);

/// Fetches a photo of another garden, or nothing when it can't be had.
using FetchPhoto = std::function<QByteArray(const std::string& name)>;

/// Writes a new file, in place of the one at `path` if there is one.
/// \param names  photos to take along; what `fetch` can't find is left out
Edition writeGardenStore(const QString& path, const model::Garden& garden,
                         const StepHistory& history, const std::vector<std::string>& names,
                         const FetchPhoto& fetch);

/// Takes one edit into a file that is at `expected`; any other edition is refused (changed).
[[nodiscard]] Edition recordEdit(const QString& path, const Edition& expected,
                                 const Record& record);

/// Holds every row and page against what was written; nothing, or what is wrong, one line each.
[[nodiscard]] std::vector<std::string> checkStore(const QString& path);

} // namespace app
