#include "ui/direction/plan_outcome.h"

#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"
#include "ui/trends/sheet_model.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

namespace chalk::ui::direction {

namespace {

constexpr double kOutcomeRow = 32;

}  // namespace

PlanOutcome::PlanOutcome(const common::Look& look, QWidget* parent)
    : QWidget(parent), m_look(look), m_title(new QLabel), m_sentences(new QLabel), m_table(new QTableView)
{
    m_title->setProperty("role", QStringLiteral("section"));
    m_sentences->setWordWrap(true);
    m_sentences->setTextFormat(Qt::RichText);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setAccessibleName(tr("Lifts of the plan"));
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setMinimumSectionSize(1);
    m_table->verticalHeader()->setDefaultSectionSize(qRound(look.theme().scaled(kOutcomeRow)));
    m_table->horizontalHeader()->setHighlightSections(false);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    const auto button = [&](const QString& text, const QString& icon, void (PlanOutcome::*asked)()) {
        auto* made = new common::ActionButton(look, text);
        made->setIconName(icon);
        made->setAutoDefault(false);
        connect(made, &QPushButton::clicked, this, asked);
        buttons->addWidget(made);
    };
    button(tr("Next plan"), QStringLiteral("direction"), &PlanOutcome::nextPlanAsked);
    button(tr("Back to the cycle"), QStringLiteral("again"), &PlanOutcome::backAsked);
    button(tr("Print"), QStringLiteral("print"), &PlanOutcome::printAsked);
    buttons->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(m_title);
    column->addWidget(m_sentences);
    column->addWidget(m_table, 1);
    column->addLayout(buttons);
}

void PlanOutcome::setOutcome(const PlanOutcomeCase& outcome)
{
    m_title->setText(tr("The plan of %1 is over").arg(outcome.client));
    QString html;
    for (const QString& sentence : outcomeSentences(outcome)) {
        html += common::proseHtml(sentence.toHtmlEscaped());
    }
    m_sentences->setText(html);
    QAbstractItemModel* before = m_table->model();
    m_table->setModel(new trends::SheetModel(outcomeSheet(outcome), m_table));
    delete before;
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_table->selectRow(0);
}

}  // namespace chalk::ui::direction
