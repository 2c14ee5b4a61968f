#include "ui/onboarding/visit_table.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"

#include <QApplication>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLocale>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr int kFirstTime = 5 * 60;
constexpr int kLastTime = 22 * 60;
constexpr int kTimeStep = 30;
constexpr int kVisitDays = 7;

}  // namespace

VisitTable::VisitTable(QWidget* parent) : QWidget(parent), m_grid(new QGridLayout(this))
{
    m_grid->setContentsMargins(16, 4, 16, 12);
    m_grid->setHorizontalSpacing(10);
    m_grid->setVerticalSpacing(6);
    m_grid->setColumnStretch(3, 1);
}

void VisitTable::clear()
{
    while (QLayoutItem* item = m_grid->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    m_rows.clear();
}

void VisitTable::setDesk(const PlanDesk& desk)
{
    const QWidget* focused = QApplication::focusWidget();
    if (m_focusName.isEmpty() && focused != nullptr && isAncestorOf(focused)) {
        m_focusName = focused->accessibleName();
    }
    clear();
    const WeekContents contents = desk.contents();
    for (const planning::WeekSlot& slot : desk.plan().week.slots) {
        addRow(slot, desk, contents);
    }
    const auto widgets = m_focusName.isEmpty() ? QList<QWidget*>() : findChildren<QWidget*>();
    for (QWidget* widget : widgets) {
        if (!widget->isHidden() && widget->accessibleName() == m_focusName) {
            widget->setFocus(Qt::OtherFocusReason);
        }
    }
    m_focusName.clear();
}

void VisitTable::addRow(const planning::WeekSlot& slot, const PlanDesk& desk, const WeekContents& contents)
{
    Row row{slot, new QComboBox(this), new QComboBox(this)};
    const std::size_t session = desk.templateSessionOf(slot.session);
    const QString name = tr("Session %1").arg(contents.names.value(static_cast<qsizetype>(session)));
    for (int day = 0; day < kVisitDays; ++day) {
        row.day->addItem(QLocale::c().dayName(day + 1));
    }
    row.day->setCurrentIndex(slot.weekday);
    for (int minute = kFirstTime; minute <= kLastTime; minute += kTimeStep) {
        row.time->addItem(common::qstring(sessions::clockText(minute)), minute);
    }
    row.time->setCurrentIndex(std::max(0, row.time->findData(slot.startMinute)));
    row.day->setAccessibleName(tr("Day of %1").arg(name));
    row.time->setAccessibleName(tr("Time of %1").arg(name));
    QStringList dates;
    for (const planning::PlannedSession& visit : desk.plan().sessions) {
        if (visit.session == slot.session) {
            dates.append(common::shortDayText(visit.date));
        }
    }
    auto* days = new QLabel(dates.join(QStringLiteral(", ")), this);
    days->setWordWrap(true);
    days->setProperty("role", QStringLiteral("secondary"));
    const int line = 2 * static_cast<int>(m_rows.size());
    m_grid->addWidget(new QLabel(name, this), line, 0);
    m_grid->addWidget(row.day, line, 1);
    m_grid->addWidget(row.time, line, 2);
    m_grid->addWidget(days, line, 3);
    for (QComboBox* box : {row.day, row.time}) {
        connect(box, &QComboBox::activated, this, &VisitTable::tell);
    }
    m_rows.push_back(row);
    addLifts(line + 1, session, contents);
    for (int i = 0; i < m_grid->count(); ++i) {
        m_grid->itemAt(i)->widget()->show();
    }
}

void VisitTable::addLifts(int line, std::size_t session, const WeekContents& contents)
{
    auto* lifts = new SessionLifts(session, contents, this);
    lifts->setContentsMargins(0, 0, 0, 8);
    connect(lifts, &SessionLifts::contentsChanged, this, [this](const planning::SessionContents& changed, const QString& focusName) {
        m_focusName = focusName;
        Q_EMIT contentsChanged(changed);
    });
    m_grid->addWidget(lifts, line, 1, 1, 3);
}

void VisitTable::tell()
{
    std::vector<planning::WeekSlot> changed;
    for (const Row& row : m_rows) {
        changed.push_back({row.slot.session, row.day->currentIndex(), row.time->currentData().toInt()});
    }
    Q_EMIT slotsChanged(changed);
}

}  // namespace chalk::ui::onboarding
