#pragma once

#include "ui/decisions/swap_offers.h"

#include <QDialog>
#include <QString>

#include <functional>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::decisions {
class SwapEditor;
}

namespace chalk::ui::floor {

/// Lets another exercise take the place of a lift's, in a window of its own: Enter swaps, Esc leaves everything as it is.
class SwapDialog : public QDialog {
    Q_OBJECT

public:
    /// Writes the swap for the exercise called `name`; answers why it was refused, empty where it was done.
    using Write = std::function<QString(const progression::Swap& swap, const QString& name)>;

    /// `look` and what the offers point at outlive the dialog.
    SwapDialog(const common::Look& look, const decisions::SwappedLift& lift, const std::vector<decisions::SwapOffer>& offers, Write write,
               QWidget* parent = nullptr);

    void sayFault(const QString& fault);

private:
    void swap();

    Write m_write;
    decisions::SwapEditor* m_editor;
};

}  // namespace chalk::ui::floor
