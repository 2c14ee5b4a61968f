#include "ui/direction/plan_comparison.h"

#include "core/direction/plan_calendar.h"
#include "ui/common/action_button.h"
#include "ui/common/dialogs.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/segmented_choice.h"
#include "ui/common/whole_file.h"
#include "ui/direction/padded_cells.h"
#include "ui/direction/plan_comparison_chart.h"
#include "ui/trends/sheet_model.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QShortcut>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace chalk::ui::direction {

namespace {

constexpr double kComparedRow = 28;
constexpr double kLeastChartHeight = 260;

QTableView* comparedTable(const common::Look& look)
{
    auto* table = new QTableView;
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    setPlainCells(*table);
    table->verticalHeader()->hide();
    table->verticalHeader()->setMinimumSectionSize(1);
    table->verticalHeader()->setDefaultSectionSize(qRound(look.theme().scaled(kComparedRow)));
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    return table;
}

}  // namespace

PlanComparison::PlanComparison(const common::Look& look, common::Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_dialogs(dialogs),
      m_lifts(new QComboBox),
      m_form(new common::SegmentedChoice(tr("Chart or table"), {{tr("Chart")}, {tr("Table")}})),
      m_export(new common::ActionButton(look, tr("Export…"))),
      m_saying(new QLabel),
      m_stack(new QStackedWidget),
      m_chart(new trends::ChartView(look)),
      m_table(comparedTable(look))
{
    m_lifts->setAccessibleName(tr("Lift compared"));
    m_form->setToolTip(tr("T: chart or table"));
    m_saying->setProperty("role", QStringLiteral("secondary"));
    m_saying->setWordWrap(true);
    m_export->setButtonSize(common::ButtonSize::Small);
    m_export->setAutoDefault(false);
    m_chart->setMinimumHeight(qRound(look.theme().scaled(kLeastChartHeight)));
    m_stack->addWidget(m_chart);
    m_stack->addWidget(m_table);
    auto* head = new QHBoxLayout;
    head->setSpacing(8);
    head->addWidget(m_lifts);
    head->addWidget(m_saying, 1);
    head->addWidget(m_form);
    head->addWidget(m_export);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addLayout(head);
    column->addWidget(m_stack, 1);
    m_form->setChosen(0);
    connect(m_lifts, &QComboBox::currentIndexChanged, this, &PlanComparison::follow);
    connect(m_form, &common::SegmentedChoice::choiceMade, this, [this](int index) { setTable(index == 1); });
    connect(m_export, &QPushButton::clicked, this, &PlanComparison::save);
    auto* toggle = new QShortcut(Qt::Key_T, this);
    toggle->setContext(Qt::WindowShortcut);  // wherever the focus is, while this is on show
    connect(toggle, &QShortcut::activated, this, [this] { setTable(!isTable()); });
}

void PlanComparison::setCase(PlanComparisonCase facts)
{
    m_facts = std::move(facts);
    {
        const QSignalBlocker quiet(m_lifts);
        m_lifts->clear();
        m_lifts->addItem(tr("All lifts"));
        for (const ComparedLift& lift : m_facts.lifts) {
            m_lifts->addItem(lift.name);
        }
    }
    follow();
}

std::optional<std::size_t> PlanComparison::lift() const
{
    return m_lifts->currentIndex() <= 0 ? std::nullopt : std::optional(static_cast<std::size_t>(m_lifts->currentIndex() - 1));
}

void PlanComparison::setLift(std::optional<std::size_t> lift)
{
    m_lifts->setCurrentIndex(lift ? static_cast<int>(*lift) + 1 : 0);
}

void PlanComparison::setTable(bool isTable)
{
    const bool hadFocus = m_stack->currentWidget()->hasFocus();
    m_form->setChosen(isTable ? 1 : 0);
    m_stack->setCurrentIndex(isTable ? 1 : 0);
    if (hadFocus) {
        m_stack->currentWidget()->setFocus(Qt::OtherFocusReason);
    }
}

bool PlanComparison::isTable() const
{
    return m_stack->currentIndex() == 1;
}

QString PlanComparison::saying() const
{
    return m_saying->text();
}

void PlanComparison::follow()
{
    const PlanComparisonScene scene{comparedWeeks(m_facts, lift()), weekOn(m_facts.plan, m_facts.today), m_facts.today};
    const QString soFar = comparedSoFar(scene.weeks, m_facts.today);
    m_saying->setText(soFar);
    m_chart->setChart([scene](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paintPlanComparison(painter, area, scene, theme); },
                      tr("Planned and done, week by week. %1").arg(soFar));
    const trends::TrendSheet sheet = comparisonSheet(m_facts, lift());
    m_table->setAccessibleName(tr("%1: planned and done").arg(sheet.title));
    QAbstractItemModel* before = m_table->model();
    m_table->setModel(new trends::SheetModel(sheet, m_table));
    delete before;
    m_table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    if (scene.present) {
        m_table->selectRow(static_cast<int>(*scene.present));
    }
}

void PlanComparison::save()
{
    QString name;
    for (const QChar letter : m_facts.client.toLower()) {
        name += letter.isLetterOrNumber() ? letter : QLatin1Char('-');
    }
    const auto file = m_dialogs.fileToSave(window(), {tr("Export"), {}, name + QStringLiteral("-plan-and-done.csv"), tr("Table (*.csv)"), QStringLiteral("csv")});
    if (!file) {
        return;
    }
    const auto fault = common::writeWhole(*file, comparisonCsv(m_facts));
    m_saying->setText(fault ? tr("%1 could not be written: %2").arg(*file, *fault) : tr("Saved: %1").arg(*file));
}

}  // namespace chalk::ui::direction
