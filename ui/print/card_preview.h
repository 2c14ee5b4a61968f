#pragma once

#include "ui/print/paper.h"

#include <QWidget>

#include <memory>

namespace chalk::sessions {
struct CardContent;
}

namespace chalk::ui::print {

/// Shows a card on white paper just as it will be printed, as large as the widget allows. Empty until it has a card.
class CardPreview : public QWidget {
    Q_OBJECT

public:
    explicit CardPreview(QWidget* parent = nullptr);
    ~CardPreview() override;

    /// Keeps a copy and shows the first sheet, or the present one where it is the same client's.
    void setCard(const sessions::CardContent& card);
    void clear();
    void setPaper(PaperSize paper);
    /// Which sheet of the card, counted from 0; kept inside the card.
    void setSheet(int sheet);
    [[nodiscard]] int sheet() const { return m_sheet; }
    [[nodiscard]] int sheetCount() const { return m_sheetCount; }

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void countSheets();
    void describe();

    std::unique_ptr<const sessions::CardContent> m_card;
    PaperSize m_paper = PaperSize::A5;
    int m_sheet = 0;
    int m_sheetCount = 0;
};

}  // namespace chalk::ui::print
