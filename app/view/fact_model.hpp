#pragma once

#include "app/view/tone.hpp"

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace app {

/// One line of an answer: what it is about, its figure, the same after the suggested cuts, and a
/// sentence that says it in full.
struct Fact {
    QString subject;
    QString figure;
    QString after; ///< empty: not known or no different
    QString sentence;
    Tone::Value tone{Tone::Plain};
    QString id;       ///< of the limb or thing meant; empty: nothing to point at
    double measure{}; ///< 0 .. 1 or more, for a bar; less than 0: no bar
    QString why{};    ///< for WhyViewModel::ask(); empty: its chain can't be opened
    friend bool operator==(const Fact&, const Fact&) = default;
};

/// A short list of facts.
class FactModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    enum Role { Subject = Qt::UserRole + 1, Figure, After, Sentence, ToneRole, Id, Measure, Why };

    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<Fact> facts);
    [[nodiscard]] const std::vector<Fact>& facts() const { return facts_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<Fact> facts_;
};

} // namespace app
