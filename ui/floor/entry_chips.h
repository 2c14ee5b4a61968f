#pragma once

#include "ui/floor/entry_reading.h"

#include <QWidget>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::floor {

/// What was understood of an entry, part by part, in as many lines as it takes.
class EntryChips : public QWidget {
    Q_OBJECT

public:
    explicit EntryChips(const common::Look& look, QWidget* parent = nullptr);

    void setChips(std::vector<EntryChip> chips);

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] std::vector<QRectF> placesFor(double width) const;
    [[nodiscard]] double widthOf(const EntryChip& chip) const;

    const common::Look& m_look;
    std::vector<EntryChip> m_chips;
};

}  // namespace chalk::ui::floor
