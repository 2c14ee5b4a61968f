#pragma once

#include "core/base/id.h"
#include "core/store/store_error.h"
#include "ui/shell/page.h"

#include <QString>
#include <QWidget>

#include <vector>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::onboarding {

class MainAndSide;

struct OnboardingCase;

/// One step of the onboarding page: everything right of the list of steps, its outcome at the right included. A step reads and writes the
/// studio itself and keeps every answer as it is given; the page owns it and gives it the case of the client on show.
class OnboardingStep : public QWidget {
    Q_OBJECT

public:
    using QWidget::QWidget;

    /// Shows this case, which outlives the call alone. Called when the step is gone to, for another client, and again after every
    /// `saved`; what the person is typing in keeps its cursor.
    virtual void setCase(const OnboardingCase& onboarding) = 0;
    /// Puts the focus where work starts: the first thing that is still open.
    virtual void takeFocus() = 0;
    /// Writes at once what waits to be written. Called before the step is left. False where the studio refused it; `refused` said why.
    virtual bool keep() { return true; }

    /// For the ledge, the most useful first. What the step can be told to do is its actions(), as of a page.
    [[nodiscard]] virtual std::vector<shell::KeyHint> keyHints() const { return {}; }
    /// Whether Ctrl+P has something to print in this step.
    [[nodiscard]] virtual bool canPrint() const { return false; }
    virtual void print() {}
    /// Esc: closes an editor or a popup of the step. False where there was nothing to close.
    virtual bool closeOrClear() { return false; }
    virtual void setRoom(bool isNarrow, bool isLow);

protected:
    /// Fills the step: the work, and what follows from it. Once.
    void layOut(const common::Look& look, QWidget* work, QWidget* side);
    void resizeEvent(QResizeEvent* event) override;
    /// Says what the studio could not keep. Where the person chose to keep somebody else's version, that one is read.
    void tell(const store::StoreError& error);

Q_SIGNALS:
    /// Something was written: the case is read again, the other pages are told.
    void saved();
    /// The person got a name and with it a place in the studio: the page goes on with this client.
    void clientAdded(base::ClientId client);
    /// The studio could not keep something, and why. What was typed stays in its field.
    void refused(const QString& message);
    /// The step is done with for now: the next one is wanted.
    void nextAsked();
    /// Another step is wanted: a banner's or a line's way out.
    void placeAsked(const chalk::ui::shell::Place& place);
    /// keyHints(), canPrint() or the actions are different now.
    void stepChanged();

private:
    MainAndSide* m_parts = nullptr;
};

}  // namespace chalk::ui::onboarding
