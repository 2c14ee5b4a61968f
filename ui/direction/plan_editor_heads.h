#pragma once

#include <QHeaderView>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::direction {

/// The heads of the plan editor's table: two lines above a column, of which the upper one may reach over the next columns; one line before a row.
class PlanEditorHeads : public QHeaderView {
    Q_OBJECT

public:
    /// `look` outlives the heads.
    PlanEditorHeads(const common::Look& look, Qt::Orientation orientation, QWidget* parent = nullptr);

    /// As wide as the longest head of a row, or as high as two lines.
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override;

private:
    const common::Look& m_look;
};

}  // namespace chalk::ui::direction
