#pragma once

#include <QWidget>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::week {

/// What the blocks of the week mean, two in a row; one where the width is too small.
class WeekLegend : public QWidget {
    Q_OBJECT

public:
    explicit WeekLegend(const common::Look& look, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {1, sizeHint().height()}; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] int columns() const;

    const common::Look& m_look;
};

}  // namespace chalk::ui::week
