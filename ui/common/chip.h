#pragma once

#include <QAbstractButton>

#include <optional>

namespace chalk::ui::common {

class Look;

/// A filter above a list: a word and how many it leaves, with a frame while it is on. Checkable; put chips of which only one
/// can be on into a QButtonGroup.
class Chip : public QAbstractButton {
    Q_OBJECT

public:
    Chip(const Look& look, const QString& text, QWidget* parent = nullptr);

    /// Nothing shows no number.
    void setCount(std::optional<int> count);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    void fit();

    const Look& m_look;
    std::optional<int> m_count;
};

}  // namespace chalk::ui::common
