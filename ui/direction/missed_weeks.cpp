#include "ui/direction/missed_weeks.h"

#include "ui/common/action_button.h"
#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/segmented_choice.h"
#include "ui/common/style_sheet.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QTableWidget>
#include <QVBoxLayout>

namespace chalk::ui::direction {

namespace {

using chalk::direction::MissedWeeks;

constexpr double kMissedWidth = 860;
constexpr double kMissedHeight = 640;
constexpr double kMissedListWidth = 270;
constexpr double kMissedRow = 28;
constexpr double kMissedItem = 30;
constexpr QChar kAfterMark(0x2002);  // an en space: the box of a list has no room behind it
constexpr std::array kWays{MissedWeeks::Shift, MissedWeeks::Squeeze};

QLabel* missedHead(const QString& text, const char* role)
{
    auto* head = new QLabel(text);
    head->setWordWrap(true);
    head->setProperty("role", QString::fromLatin1(role));
    return head;
}

}  // namespace

MissedWeeksDialog::MissedWeeksDialog(const common::Look& look, MissedWeeksCase facts, QWidget* parent)
    : QDialog(parent),
      m_look(look),
      m_facts(std::move(facts)),
      m_weeks(new QListWidget),
      m_way(new common::SegmentedChoice(tr("What becomes of the plan"), {{tr("Shift")}, {tr("Squeeze")}})),
      m_rows(new QTableWidget),
      m_shift(missedHead({}, "small")),
      m_squeeze(missedHead({}, "small"))
{
    setWindowTitle(tr("Missed weeks of %1").arg(m_facts.client));
    auto* row = new QHBoxLayout;
    row->setSpacing(16);
    row->addWidget(weeksPart());
    row->addWidget(previewPart(), 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 12);
    column->setSpacing(12);
    column->addLayout(row, 1);
    column->addWidget(foot());
    connect(m_weeks, &QListWidget::itemChanged, this, &MissedWeeksDialog::follow);
    connect(m_way, &common::SegmentedChoice::choiceMade, this, &MissedWeeksDialog::follow);
    m_way->setChosen(0);
    follow();
    resize(qRound(look.theme().scaled(kMissedWidth)), qRound(look.theme().scaled(kMissedHeight)));
    m_weeks->setFocus(Qt::OtherFocusReason);
}

QWidget* MissedWeeksDialog::weeksPart()
{
    auto* part = new QWidget;
    part->setFixedWidth(qRound(m_look.theme().scaled(kMissedListWidth)));
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(missedHead(tr("Weeks that are or were missed"), "section"));
    column->addWidget(missedHead(tr("Space marks a week. What looks missed is marked already."), "secondary"));
    column->addWidget(m_weeks, 1);
    m_weeks->setAccessibleName(tr("Weeks of the plan"));
    const auto reasons = missedReasons(m_facts.plan.plan, m_facts.done, m_facts.away, m_facts.today);
    for (std::size_t i = 0; i < reasons.size(); ++i) {
        const auto& week = m_facts.plan.plan.weeks[i];
        QString text = QStringLiteral("%1  %2, %3").arg(i + 1).arg(common::shortDayText(week.monday), common::phaseName(week.phase));
        if (reasons[i] != MissedReason::None) {
            text += QStringLiteral(" · ") + missedReasonText(reasons[i]);
        }
        auto* item = new QListWidgetItem(kAfterMark + text, m_weeks);
        item->setData(Qt::AccessibleTextRole, text);
        item->setSizeHint(QSize(0, qRound(m_look.theme().scaled(kMissedItem))));
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(reasons[i] == MissedReason::None ? Qt::Unchecked : Qt::Checked);
        if (reasons[i] != MissedReason::None && m_weeks->currentRow() < 0) {
            m_weeks->setCurrentItem(item);
        }
    }
    if (m_weeks->currentRow() < 0) {
        m_weeks->setCurrentRow(0);
    }
    return part;
}

QWidget* MissedWeeksDialog::previewPart()
{
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* choice = new QHBoxLayout;
    choice->addWidget(missedHead(tr("What becomes of the plan"), "section"), 1);
    choice->addWidget(m_way);
    column->addLayout(choice);
    column->addWidget(m_shift);
    column->addWidget(m_squeeze);
    m_rows->setColumnCount(4);
    m_rows->setHorizontalHeaderLabels({tr("Week of"), tr("Before"), tr("Shifted"), tr("Squeezed")});
    m_rows->setAccessibleName(tr("Weeks before and after"));
    m_rows->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_rows->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_rows->setSelectionMode(QAbstractItemView::SingleSelection);
    m_rows->setTabKeyNavigation(false);
    m_rows->verticalHeader()->hide();
    m_rows->verticalHeader()->setMinimumSectionSize(1);
    m_rows->verticalHeader()->setDefaultSectionSize(qRound(m_look.theme().scaled(kMissedRow)));
    m_rows->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_rows->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_rows->horizontalHeader()->setHighlightSections(false);
    column->addWidget(m_rows, 1);
    return part;
}

QWidget* MissedWeeksDialog::foot()
{
    auto* part = new QWidget;
    auto* row = new QHBoxLayout(part);
    row->setContentsMargins(0, 0, 0, 0);
    auto* leave = new common::ActionButton(m_look, tr("Leave"));
    leave->setKeyText(tr("Esc"));
    leave->setAutoDefault(false);
    m_keep = new common::ActionButton(m_look, tr("Shift the plan"));
    m_keep->setKind(common::ButtonKind::Primary);
    m_keep->setKeyText(tr("Enter"));
    m_keep->setDefault(true);
    row->addStretch(1);
    row->addWidget(leave);
    row->addWidget(m_keep);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_keep, &QPushButton::clicked, this, &QDialog::accept);
    return part;
}

std::vector<base::Date> MissedWeeksDialog::missed() const
{
    std::vector<base::Date> mondays;
    for (int row = 0; row < m_weeks->count(); ++row) {
        if (m_weeks->item(row)->checkState() == Qt::Checked) {
            mondays.push_back(m_facts.plan.plan.weeks[static_cast<std::size_t>(row)].monday);
        }
    }
    return mondays;
}

MissedWeeks MissedWeeksDialog::way() const
{
    return kWays[static_cast<std::size_t>(m_way->chosen())];
}

chalk::direction::ClientPlan MissedWeeksDialog::plan() const
{
    chalk::direction::ClientPlan changed = m_facts.plan;
    changed.plan = withMissedWeeks(m_facts.plan.plan, missed(), way());
    return changed;
}

void MissedWeeksDialog::showRows(const std::vector<base::Date>& mondays)
{
    const std::vector<MissedRow> rows = missedRows(m_facts.plan.plan, mondays);
    m_rows->setRowCount(static_cast<int>(rows.size()));
    for (std::size_t i = 0; i < rows.size(); ++i) {
        int column = 0;
        for (const QString& text : {common::shortDayText(rows[i].monday), rows[i].before, rows[i].shifted, rows[i].squeezed}) {
            m_rows->setItem(static_cast<int>(i), column++, new QTableWidgetItem(text));
        }
    }
}

void MissedWeeksDialog::follow()
{
    const std::vector<base::Date> mondays = missed();
    const auto& plan = m_facts.plan.plan;
    const bool hasAny = !mondays.empty();
    m_shift->setText(hasAny ? tr("Shift: %1").arg(missedText(missedPreview(plan, mondays, MissedWeeks::Shift), plan)) : tr("No week is marked: the plan stays as it is."));
    m_squeeze->setText(hasAny ? tr("Squeeze: %1").arg(missedText(missedPreview(plan, mondays, MissedWeeks::Squeeze), plan)) : QString());
    for (const auto& [label, isChosen] : {std::pair(m_shift, way() == MissedWeeks::Shift), std::pair(m_squeeze, way() == MissedWeeks::Squeeze)}) {
        label->setProperty("role", isChosen && hasAny ? QStringLiteral("smallStrong") : QStringLiteral("small"));
        common::restyle(*label);
    }
    m_keep->setEnabled(hasAny);
    m_keep->setText(way() == MissedWeeks::Shift ? tr("Shift the plan") : tr("Squeeze the plan"));
    showRows(mondays);
}

}  // namespace chalk::ui::direction
