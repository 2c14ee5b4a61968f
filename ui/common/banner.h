#pragma once

#include "ui/common/theme.h"

#include <QWidget>

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace chalk::ui::common {

class ActionButton;
class Look;

/// What a banner says.
struct BannerMessage {
    Signal signal = Signal::Info;
    QString icon;  ///< a name of resources/icons
    QString lead;  ///< the first words, bold: `Lower back.`
    QString text;  ///< the rest; plain text, never cut: it wraps

    bool operator==(const BannerMessage&) const = default;
};

/// A message across the page. It is never cut short and cannot be closed: it goes when its reason goes. It is announced to
/// screen readers when it appears or changes.
class Banner : public QWidget {
    Q_OBJECT

public:
    explicit Banner(const Look& look, QWidget* parent = nullptr);

    void setMessage(const BannerMessage& message);
    /// Adds what can be done about it, at the right; the banner owns the button.
    ActionButton* addButton(const QString& text);

protected:
    void paintEvent(QPaintEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void announce();
    void dress();

    const Look& m_look;
    BannerMessage m_message;
    QLabel* m_icon;
    QLabel* m_text;
    QHBoxLayout* m_row;
};

}  // namespace chalk::ui::common
