#pragma once

#include "app/store/recover_garden.hpp"
#include "app/store/store_error.hpp"

#include <QByteArray>
#include <QString>

/// What the window and the commands say of a garden's file: one sentence or two on one line, with
/// what happened, where the garden is now, and what helps.
namespace app {

/// \param document  what the file holds, so that a fault's place is told by the names in it
[[nodiscard]] QString notReadSentence(const QString& path, const std::vector<model::Fault>& faults,
                                      const QByteArray& document = {});
[[nodiscard]] QString notWrittenSentence(const QString& path, const StoreError& error);
[[nodiscard]] QString openElsewhereSentence(const QString& path);
[[nodiscard]] QString readOnlySentence(const QString& path);
[[nodiscard]] QString raisedSentence(const QString& path, const QString& copy);
/// "trees: 3, limbs: 40, visits: 12, photos: 2; lost: the place of the garden".
[[nodiscard]] QString recoverySummary(const Recovery& recovery);
[[nodiscard]] QString recoveredSentence(const QString& path, const QString& to,
                                        const Recovery& recovery);
[[nodiscard]] QString withoutPhotosSentence(const QString& path, int missing);

} // namespace app
