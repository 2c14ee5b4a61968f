#include "ui/common/segmented_choice.h"

#include "ui/common/style_sheet.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QToolButton>

#include <algorithm>

namespace chalk::ui::common {

namespace {

QLatin1String segmentKey(std::size_t index, std::size_t count)
{
    if (count == 1) {
        return QLatin1String("only");
    }
    return index == 0 ? QLatin1String("first") : index + 1 == count ? QLatin1String("last") : QLatin1String("middle");
}

QLatin1String segmentTone(const std::optional<Signal>& signal)
{
    if (!signal) {
        return QLatin1String("chosen");
    }
    switch (*signal) {
    case Signal::Pain:
        return QLatin1String("pain");
    case Signal::Warn:
        return QLatin1String("warn");
    case Signal::Ok:
        return QLatin1String("ok");
    case Signal::Info:
    case Signal::Muted:
        return QLatin1String("info");
    }
    return {};
}

}  // namespace

SegmentedChoice::SegmentedChoice(const QString& name, const std::vector<Segment>& segments, QWidget* parent)
    : QFrame(parent), m_group(new QButtonGroup(this))
{
    setProperty("segmented", true);
    setAccessibleName(name);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    for (std::size_t i = 0; i < segments.size(); ++i) {
        auto* button = new QToolButton(this);
        button->setText(segments[i].text);
        button->setAccessibleName(tr("%1: %2").arg(name, segments[i].text));
        button->setCheckable(true);
        button->setFocusPolicy(Qt::StrongFocus);
        button->setProperty("segment", segmentKey(i, segments.size()));
        button->setProperty("tone", segmentTone(segments[i].signal));
        button->installEventFilter(this);
        m_group->addButton(button, static_cast<int>(i));
        row->addWidget(button);
    }
    connect(m_group, &QButtonGroup::idClicked, this, &SegmentedChoice::choiceMade);
    connect(m_group, &QButtonGroup::idToggled, this, &SegmentedChoice::placeTabStop);
    placeTabStop();
}

void SegmentedChoice::placeTabStop()
{
    const int stop = std::max(0, chosen());
    for (QAbstractButton* button : m_group->buttons()) {
        button->setFocusPolicy(m_group->id(button) == stop ? Qt::StrongFocus : Qt::ClickFocus);
    }
}

void SegmentedChoice::setCompact()
{
    for (QAbstractButton* button : m_group->buttons()) {
        button->setProperty("sizing", QStringLiteral("small"));
    }
}

int SegmentedChoice::chosen() const
{
    return m_group->checkedId();
}

void SegmentedChoice::setChosen(int index)
{
    m_group->setExclusive(false);
    for (QAbstractButton* button : m_group->buttons()) {
        button->setChecked(m_group->id(button) == index);
    }
    m_group->setExclusive(true);
}

void SegmentedChoice::setAvailable(int index, bool isAvailable)
{
    m_group->button(index)->setVisible(isAvailable);
    std::vector<QAbstractButton*> inSight;
    for (QAbstractButton* button : m_group->buttons()) {
        if (!button->isHidden()) {
            inSight.push_back(button);
        }
    }
    for (std::size_t i = 0; i < inSight.size(); ++i) {
        inSight[i]->setProperty("segment", segmentKey(i, inSight.size()));
        restyle(*inSight[i]);
    }
}

bool SegmentedChoice::choose(int index)
{
    QAbstractButton* button = m_group->button(index);
    if (button == nullptr || button->isHidden()) {
        return false;
    }
    button->setFocus(Qt::OtherFocusReason);
    if (!button->isChecked()) {
        button->click();
    }
    return true;
}

bool SegmentedChoice::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress) {
        return QFrame::eventFilter(watched, event);
    }
    const auto* key = static_cast<QKeyEvent*>(event);
    const int here = m_group->id(qobject_cast<QAbstractButton*>(watched));
    if (key->modifiers() != Qt::NoModifier && key->modifiers() != Qt::KeypadModifier) {
        return QFrame::eventFilter(watched, event);
    }
    if (key->key() == Qt::Key_Left || key->key() == Qt::Key_Right) {
        return choose(here + (key->key() == Qt::Key_Left ? -1 : 1)) || true;
    }
    if (key->key() >= Qt::Key_1 && key->key() <= Qt::Key_9 && choose(key->key() - Qt::Key_1)) {
        return true;
    }
    return QFrame::eventFilter(watched, event);
}

}  // namespace chalk::ui::common
