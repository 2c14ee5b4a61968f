#include "ui/board/sessions_tab.h"

#include "ui/board/client_case.h"
#include "ui/board/grid_rows.h"
#include "ui/board/log_delegate.h"
#include "ui/board/log_model.h"
#include "ui/common/empty_state.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QStackedLayout>
#include <QTableView>
#include <QVBoxLayout>

namespace chalk::ui::board {

namespace {

using lifts::Pattern;
using progression::Stage;

constexpr int kAll = -1;

QTableView* logTable(LogModel* model, LogDelegate* delegate, QWidget* parent)
{
    auto* table = new QTableView(parent);
    table->setModel(model);
    table->setItemDelegate(delegate);
    table->setShowGrid(false);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table->setAccessibleName(SessionsTab::tr("Sessions"));
    table->verticalHeader()->hide();
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->horizontalHeader()->setSectionResizeMode(LogModel::Decision, QHeaderView::Stretch);
    return table;
}

}  // namespace

SessionsTab::SessionsTab(const common::Look& look, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_model(new LogModel(this)),
      m_lift(new QComboBox(this)),
      m_stage(new QComboBox(this)),
      m_count(rowLabel({}, "secondary", false, this)),
      m_empty(new common::EmptyState(look, this)),
      m_pages(new QStackedLayout)
{
    m_lift->setAccessibleName(tr("Lift"));
    m_stage->setAccessibleName(tr("Stage"));
    m_stage->addItem(tr("All stages"), kAll);
    for (const Stage stage : progression::kStages) {
        m_stage->addItem(QStringLiteral("%1 %2").arg(progression::numberOf(stage)).arg(common::stageName(stage)),
                         progression::numberOf(stage));
    }
    auto* filters = new QHBoxLayout;
    filters->setSpacing(8);
    filters->addWidget(m_lift);
    filters->addWidget(m_stage);
    filters->addWidget(m_count);
    filters->addStretch();
    auto* panel = new common::Panel(look, this);
    m_table = logTable(m_model, new LogDelegate(look, this), panel);
    panel->body()->addWidget(m_table);
    m_empty->setWords(tr("No sessions here yet"), tr("What is done with this client is listed here, with each decision and its rule."));
    m_pages->addWidget(panel);
    m_pages->addWidget(m_empty);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 16);
    column->setSpacing(12);
    column->addLayout(filters);
    column->addLayout(m_pages, 1);
    connect(m_lift, &QComboBox::currentIndexChanged, this, &SessionsTab::applyFilter);
    connect(m_stage, &QComboBox::currentIndexChanged, this, &SessionsTab::applyFilter);
    connect(&look, &common::Look::changed, this, &SessionsTab::fit);
    fit();
}

void SessionsTab::setCase(const ClientCase& client)
{
    const QVariant before = m_lift->currentData();
    {
        const QSignalBlocker blocker(m_lift);
        m_lift->clear();
        m_lift->addItem(tr("All lifts"), kAll);
        for (const LiftCase& lift : client.lifts) {
            m_lift->addItem(common::qstring(lift.exercise.name), static_cast<int>(lift.pattern));
        }
        m_lift->setCurrentIndex(std::max(0, m_lift->findData(before)));
    }
    m_model->setCase(client);
    applyFilter();
}

void SessionsTab::setFilter(std::optional<Pattern> pattern, std::optional<Stage> stage)
{
    const QSignalBlocker liftBlocker(m_lift);
    const QSignalBlocker stageBlocker(m_stage);
    m_lift->setCurrentIndex(std::max(0, m_lift->findData(pattern ? static_cast<int>(*pattern) : kAll)));
    m_stage->setCurrentIndex(std::max(0, m_stage->findData(stage ? progression::numberOf(*stage) : kAll)));
    applyFilter();
}

bool SessionsTab::clearFilter()
{
    if (m_lift->currentIndex() <= 0 && m_stage->currentIndex() <= 0) {
        return false;
    }
    setFilter(std::nullopt, std::nullopt);
    return true;
}

void SessionsTab::takeFocus()
{
    m_table->setFocus(Qt::ShortcutFocusReason);
    if (m_model->rowCount() > 0 && !m_table->currentIndex().isValid()) {
        m_table->setCurrentIndex(m_model->index(0, 0));
    }
}

void SessionsTab::applyFilter()
{
    const int pattern = m_lift->currentData().toInt();
    const int stage = m_stage->currentData().toInt();
    m_model->setFilter(pattern == kAll ? std::nullopt : std::optional(static_cast<Pattern>(pattern)),
                       stage == kAll ? std::nullopt : std::optional(static_cast<Stage>(stage)));
    tell();
}

void SessionsTab::tell()
{
    const int rows = m_model->rowCount();
    m_count->setText(rows == 1 ? tr("1 entry") : tr("%1 entries").arg(rows));
    m_pages->setCurrentIndex(rows == 0 ? 1 : 0);
}

void SessionsTab::fit()
{
    const auto scaled = [this](double px) { return qRound(m_look.theme().scaled(px)); };
    m_table->verticalHeader()->setDefaultSectionSize(scaled(56));
    m_table->setColumnWidth(LogModel::Day, scaled(140));
    m_table->setColumnWidth(LogModel::Lift, scaled(170));
    m_table->setColumnWidth(LogModel::What, scaled(220));
    m_table->setColumnWidth(LogModel::Next, scaled(140));
}

}  // namespace chalk::ui::board
