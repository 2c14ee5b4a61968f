#include "ui/common/editor_foot.h"

#include <QHBoxLayout>

namespace chalk::ui::common {

EditorFoot::EditorFoot(const Look& look, const QString& keepText, QWidget* parent)
    : QWidget(parent), m_look(look), m_row(new QHBoxLayout(this)), m_keep(new ActionButton(look, keepText, this)), m_leave(new ActionButton(look, tr("Leave"), this))
{
    m_row->setContentsMargins(0, 6, 0, 0);
    m_row->addWidget(m_keep);
    m_row->addWidget(m_leave);
    m_row->addStretch(1);
    m_keep->setKind(ButtonKind::Primary);
    m_keep->setKeyText(tr("Enter"));
    m_leave->setKeyText(tr("Esc"));
    connect(m_keep, &QPushButton::clicked, this, &EditorFoot::keepAsked);
    connect(m_leave, &QPushButton::clicked, this, &EditorFoot::leaveAsked);
}

ActionButton* EditorFoot::addButton(const QString& text)
{
    auto* button = new ActionButton(m_look, text, this);
    m_row->insertWidget(m_row->indexOf(m_leave), button);
    setTabOrder(button, m_leave);
    return button;
}

void EditorFoot::setCompact()
{
    for (ActionButton* button : findChildren<ActionButton*>()) {
        button->setButtonSize(ButtonSize::Small);
        button->setKeyText({});
    }
}

}  // namespace chalk::ui::common
