#include "ui/common/panel.h"

#include "ui/common/look.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace chalk::ui::common {

namespace {

constexpr double kPanelHeadHeight = 44;

}  // namespace

Panel::Panel(const Look& look, QWidget* parent)
    : QFrame(parent),
      m_look(look),
      m_head(new QWidget(this)),
      m_headRow(new QHBoxLayout(m_head)),
      m_title(new QLabel(m_head)),
      m_note(new QLabel(m_head)),
      m_line(new QFrame(this)),
      m_body(nullptr)
{
    setProperty("panel", true);
    m_title->setProperty("role", QStringLiteral("section"));
    m_note->setProperty("role", QStringLiteral("muted"));
    m_headRow->setContentsMargins(16, 0, 12, 0);
    m_headRow->setSpacing(8);
    m_headRow->addWidget(m_title);
    m_headRow->addWidget(m_note);
    m_headRow->addStretch();
    m_line->setProperty("rule", true);
    m_line->setFixedHeight(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(1, 1, 1, 1);
    column->setSpacing(0);
    column->addWidget(m_head);
    column->addWidget(m_line);
    auto* contents = new QWidget(this);
    m_body = new QVBoxLayout(contents);
    column->addWidget(contents, 1);
    m_body->setContentsMargins(0, 0, 0, 0);
    m_body->setSpacing(0);
    connect(&look, &Look::changed, this, &Panel::dress);
    dress();
    setTitle({});
}

void Panel::setTitle(const QString& title, const QString& note)
{
    m_title->setText(title);
    m_note->setText(note);
    m_head->setVisible(!title.isEmpty());
    m_line->setVisible(!title.isEmpty());
    setAccessibleName(title);
}

void Panel::addHeadTool(QWidget* widget)
{
    m_headRow->addWidget(widget);
}

void Panel::dress()
{
    m_head->setFixedHeight(qRound(m_look.theme().scaled(kPanelHeadHeight)));
}

}  // namespace chalk::ui::common
