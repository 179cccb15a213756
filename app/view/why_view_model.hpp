#pragma once

#include "app/assess/newest_wins.hpp"
#include "app/view/chain_model.hpp"
#include "app/view/light_view_model.hpp"
#include "app/view/why.hpp"
#include "app/view/workspace.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <optional>

namespace app {

/// Why a figure in the window is what it is: the chain from what was drawn and published to it,
/// each step with its source. While it is open it follows what is drawn.
class WhyViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the window")
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString answer READ answer NOTIFY changed FINAL)
    Q_PROPERTY(QString about READ about NOTIFY changed FINAL)
    Q_PROPERTY(QString method READ method NOTIFY changed FINAL)
    Q_PROPERTY(app::ChainModel* steps READ steps CONSTANT FINAL)
    Q_PROPERTY(QString whoKey READ whoKey CONSTANT FINAL)
    Q_PROPERTY(QString cutsKey READ cutsKey CONSTANT FINAL)
    Q_PROPERTY(QString triedKey READ triedKey CONSTANT FINAL)

public:
    explicit WhyViewModel(Workspace& workspace, QObject* parent = nullptr);
    /// What explains the year's light: it has the figures already.
    /// \param light  outlives this
    void follow(LightViewModel& light);

    [[nodiscard]] bool isOpen() const { return asked_.has_value(); }
    [[nodiscard]] QString title() const { return chain_.title; }
    [[nodiscard]] QString answer() const { return chain_.answer; }
    [[nodiscard]] QString about() const { return chain_.about; }
    [[nodiscard]] QString method() const { return chain_.method; } ///< page of the formulas
    [[nodiscard]] ChainModel* steps() { return &steps_; }
    [[nodiscard]] QString whoKey() const { return why::key(why::Kind::who); }
    [[nodiscard]] QString cutsKey() const { return why::key(why::Kind::cuts); }
    [[nodiscard]] QString triedKey() const { return why::key(why::Kind::allTried); }

    /// Opens the chain of a figure. \param key  as a fact, a cut or whoKey() has it
    Q_INVOKABLE void ask(const QString& key);
    /// Of a cut by its row: of those suggested, or tried out.
    Q_INVOKABLE void askCut(int row);
    Q_INVOKABLE void askTried(int row);
    Q_INVOKABLE void close();

signals:
    void changed();

private:
    using Work = std::function<Chain()>;
    void refresh();
    /// What makes the chain, on another thread; empty: what was asked about is no longer there.
    [[nodiscard]] Work work() const;
    [[nodiscard]] Work limbWork() const;
    [[nodiscard]] Work stripWork() const;
    [[nodiscard]] Work plantingWork() const;
    [[nodiscard]] Work yearWork() const;
    [[nodiscard]] Work gainWork() const;
    [[nodiscard]] Work cutWork() const;
    [[nodiscard]] Work whoWork() const;
    [[nodiscard]] bool isOfCuts() const;

    Workspace& workspace_;
    LightViewModel* light_{};
    std::optional<why::Question> asked_;
    Chain chain_;
    ChainModel steps_;
    NewestWins worker_{std::chrono::milliseconds(0)}; ///< last, so that its thread ends first
};

} // namespace app
