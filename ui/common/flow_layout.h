#pragma once

#include <QLayout>
#include <QList>

namespace chalk::ui::common {

/// Lays its items out like words: side by side, and on a further line where the width ends. Every item gets its size hint.
class FlowLayout : public QLayout {
    Q_OBJECT

public:
    /// Gaps in pixels.
    FlowLayout(int gapAcross, int gapDown, QWidget* parent = nullptr);
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override;
    [[nodiscard]] int count() const override { return static_cast<int>(m_items.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

private:
    /// Where each shown item stands for a width that begins at `corner`, in the order of the items; the bottom edge comes last.
    [[nodiscard]] std::pair<QList<QRect>, int> placesIn(const QRect& rect) const;

    int m_gapAcross;
    int m_gapDown;
    QList<QLayoutItem*> m_items;
};

}  // namespace chalk::ui::common
