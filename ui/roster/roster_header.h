#pragma once

#include <QHeaderView>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::roster {

/// The head of the roster's table. Above the strips it writes what each ladder is.
class RosterHeader : public QHeaderView {
    Q_OBJECT

public:
    /// `look` outlives the header.
    explicit RosterHeader(const common::Look& look, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override;

private:
    const common::Look& m_look;
};

}  // namespace chalk::ui::roster
