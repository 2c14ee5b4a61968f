#pragma once

#include "ui/settings/settings_section.h"

#include <QAbstractButton>
#include <QWidget>

#include <vector>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::settings {

/// A section in the list: its icon and its name, with a frame around it while it is on show.
class SectionButton : public QAbstractButton {
    Q_OBJECT

public:
    SectionButton(const common::Look& look, const QString& name, const QString& icon, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    /// Up and Down are the list's.
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    const common::Look& m_look;
    QString m_icon;
};

/// The sections at the left of the settings. A click chooses one; Up and Down go through them.
class SectionList : public QWidget {
    Q_OBJECT

public:
    SectionList(const common::Look& look, const std::vector<SectionEntry>& sections, QWidget* parent = nullptr);

    /// Marks a section without telling.
    void setChosen(int index);
    /// The button of the chosen section takes the focus.
    void takeFocus();

Q_SIGNALS:
    void sectionChosen(int index);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    std::vector<SectionButton*> m_buttons;
    int m_chosen = 0;
};

}  // namespace chalk::ui::settings
