#pragma once

#include "ui/common/theme.h"

#include <QWidget>

class QHBoxLayout;
class QLabel;

namespace chalk::ui::common {

class ActionButton;
class Look;

/// What stands where nothing is yet: a picture, what will be here, and one action or two.
class EmptyState : public QWidget {
    Q_OBJECT

public:
    explicit EmptyState(const Look& look, QWidget* parent = nullptr);

    /// A name of resources/icons; empty: the picture of a ladder with its first rung. `signal` colours the icon.
    void setPicture(const QString& icon, Signal signal = Signal::Muted);
    /// `Add your first client`, and a sentence or two. The text is rich text and may hold links; see linkHtml.
    void setWords(const QString& headline, const QString& text);
    /// Adds an action; the widget owns the button.
    ActionButton* addButton(const QString& text);

Q_SIGNALS:
    /// A link in the text was chosen; what stands in its href.
    void linkChosen(const QString& link);

private:
    void dress();

    const Look& m_look;
    QString m_iconName;
    Signal m_signal = Signal::Muted;
    QLabel* m_picture;
    QLabel* m_headline;
    QLabel* m_text;
    QHBoxLayout* m_buttons;
};

}  // namespace chalk::ui::common
