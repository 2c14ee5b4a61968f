#pragma once

#include "ui/common/panel.h"
#include "ui/direction/direction_changes.h"

#include <vector>

class QGridLayout;
class QLabel;
class QVBoxLayout;

namespace chalk::ui::direction {

/// What the side of the tab says.
struct DirectionSideView {
    QString title;                  ///< `What changes for Sefa`
    std::vector<ChangeLine> lines;
    QString caption;                ///< `Why strength is suggested`; empty for none
    QString why;
    QString bar;                    ///< why the first button cannot be used; empty where it can

    bool operator==(const DirectionSideView&) const = default;
};

/// The column beside a plan: lines with icons, a paragraph, buttons at its foot.
class DirectionSide : public common::Panel {
    Q_OBJECT

public:
    /// `look` outlives the side.
    explicit DirectionSide(const common::Look& look, QWidget* parent = nullptr);

    void setView(const DirectionSideView& view);
    [[nodiscard]] const DirectionSideView& view() const { return m_view; }
    void setRoom(bool isNarrow);
    /// Where the buttons go.
    [[nodiscard]] QVBoxLayout* foot() const { return m_foot; }

private:
    void fill();

    const common::Look& m_look;
    DirectionSideView m_view;
    QGridLayout* m_lines;
    QLabel* m_caption;
    QLabel* m_why;
    QLabel* m_bar;
    QVBoxLayout* m_foot;
};

}  // namespace chalk::ui::direction
