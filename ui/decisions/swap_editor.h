#pragma once

#include "core/lifts/swap_options.h"
#include "ui/decisions/coach_editor.h"

#include <memory>
#include <optional>
#include <vector>

class QLineEdit;
class QListWidget;

namespace chalk::progression {
struct Swap;
}

namespace chalk::ui::decisions {

struct SwappedLift;
using SwapOffer = lifts::SwapOption;

/// Another exercise for a pattern, of those that the studio's equipment and the client's cautions allow.
class SwapEditor : public CoachEditor {
    Q_OBJECT

public:
    /// Copies of `lift` and `offers` are kept; the exercises that the offers point at outlive the editor.
    SwapEditor(const common::Look& look, const SwappedLift& lift, const std::vector<SwapOffer>& offers, QWidget* parent = nullptr);
    ~SwapEditor() override;

    /// Nothing where no offer is chosen or the start load makes no sense.
    [[nodiscard]] std::optional<progression::Swap> event() const;
    /// The name of the chosen exercise.
    [[nodiscard]] QString chosenName() const;
    [[nodiscard]] QWidget* firstField() const override;

protected:
    [[nodiscard]] bool isReady() const override;
    [[nodiscard]] bool needsNote() const override { return false; }

private:
    void fillList();
    void reviewChoice();
    [[nodiscard]] const SwapOffer* chosen() const;
    [[nodiscard]] QString startFault() const;

    std::unique_ptr<SwappedLift> m_lift;
    std::vector<SwapOffer> m_offers;
    QListWidget* m_list;
    QLineEdit* m_start;
};

}  // namespace chalk::ui::decisions
