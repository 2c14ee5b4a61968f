#pragma once

#include <QAbstractButton>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::shell {

/// What a button of the rail shows: a page with its icon and name, or an open client with the initials.
enum class RailButtonKind : std::uint8_t { Page, Client };

/// One place in the rail. It is checked while that place is on show.
class RailButton : public QAbstractButton {
    Q_OBJECT

public:
    /// `text` is the name below the icon, or the initials.
    RailButton(const common::Look& look, RailButtonKind kind, const QString& text, const QString& icon, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    void fit();
    void paintPage(QPainter& painter) const;
    void paintClient(QPainter& painter) const;

    const common::Look& m_look;
    RailButtonKind m_kind;
    QString m_icon;
};

}  // namespace chalk::ui::shell
