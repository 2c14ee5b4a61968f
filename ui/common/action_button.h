#pragma once

#include <QPushButton>

namespace chalk::ui::common {

class Look;

/// What the button weighs on its page.
enum class ButtonKind : std::uint8_t { Normal, Primary, Plain, Link, Danger };
/// 36, 32 and 44 px high at a text size of 100 %.
enum class ButtonSize : std::uint8_t { Normal, Small, Large };

/// A push button with an icon before its text and a key cap behind it; both may be missing. Drawn in the colours of the theme,
/// whatever the theme is. The key is only shown: who owns the button sets the shortcut.
class ActionButton : public QPushButton {
    Q_OBJECT

public:
    ActionButton(const Look& look, const QString& text, QWidget* parent = nullptr);

    /// A name of resources/icons; empty for none.
    void setIconName(const QString& name);
    /// `N`, `Ctrl P`; empty for none.
    void setKeyText(const QString& keys);
    void setKind(ButtonKind kind);
    void setButtonSize(ButtonSize size);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    /// Enter presses the button, as Space does.
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QColor inkColour() const;
    [[nodiscard]] double iconSide() const;

    const Look& m_look;
    QString m_iconName;
    QString m_keys;
    ButtonKind m_kind = ButtonKind::Normal;
    ButtonSize m_size = ButtonSize::Normal;
};

}  // namespace chalk::ui::common
