#include "ui/board/change_editor.h"

#include "core/progression/coach_choice.h"
#include "core/progression/exposure_facts.h"
#include "ui/board/board_words.h"
#include "ui/board/client_case.h"
#include "ui/board/grid_rows.h"
#include "ui/common/formats.h"
#include "ui/common/style_sheet.h"
#include "ui/decisions/number_entry.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace chalk::ui::board {

namespace {

using decisions::loadOf;
using decisions::nearestLoadsText;
using decisions::restOf;
using decisions::wholeNumberOf;
using progression::CoachNumbers;
using progression::Stage;

constexpr int kMostReps = 100;
constexpr int kMostSets = 20;

QString repsUnit(lifts::Measure measure)
{
    switch (measure) {
    case lifts::Measure::Reps:
        return {};
    case lifts::Measure::Seconds:
        return QStringLiteral("s");
    case lifts::Measure::Metres:
        return QStringLiteral("m");
    }
    return {};
}

void setShown(QLineEdit* field, bool isShown)
{
    field->setVisible(isShown);
    for (const char* part : {"caption", "unit"}) {
        if (auto* label = field->property(part).value<QLabel*>()) {
            label->setVisible(isShown);
        }
    }
}

void mark(QLineEdit& field, bool isFaulty)
{
    if (field.property("invalid").toBool() != isFaulty) {
        field.setProperty("invalid", isFaulty);
        common::restyle(field);
    }
}

}  // namespace

struct ChangeEditor::Fields {
    QLineEdit* load = nullptr;
    QLineEdit* reps = nullptr;
    QLineEdit* sets = nullptr;
    QLineEdit* rest = nullptr;
};

ChangeEditor::ChangeEditor(const common::Look& look, const LiftCase& lift, QWidget* parent)
    : decisions::CoachEditor(look, tr("Change the next %1").arg(common::qstring(lift.exercise.name).toLower()), tr("Reason, a few words"), parent),
      m_lift(std::make_unique<LiftCase>(lift)),
      m_stage(new QComboBox(this)),
      m_numbers(std::make_unique<Fields>())
{
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(8);
    grid->setColumnStretch(2, 1);
    grid->addWidget(rowLabel(tr("Stage"), "secondary", false, this), 0, 0);
    grid->addWidget(m_stage, 0, 1, 1, 2);
    for (const Stage stage : progression::kStages) {
        m_stage->addItem(QStringLiteral("%1 %2").arg(progression::numberOf(stage)).arg(common::stageName(stage)),
                         progression::numberOf(stage));
    }
    m_stage->setAccessibleName(tr("Stage"));
    m_numbers->load = addField(*grid, 1, tr("Load"), common::unitText(lift.machine.setup().unit));
    m_numbers->load->setProperty("sizing", QStringLiteral("large"));
    m_numbers->reps = addField(*grid, 2, tr("Reps"), repsUnit(lift.machine.kit().measure));
    m_numbers->sets = addField(*grid, 3, tr("Sets"), {});
    m_numbers->rest = addField(*grid, 4, tr("Rest"), tr("min:s"));
    fields()->addLayout(grid);
    m_lift->next = lift.machine.withoutLighterWeek().prescriptionOn(lift.day);  // other numbers end a lighter week
    m_stage->setCurrentIndex(progression::numberOf(m_lift->next.stage) - 1);
    fill(progression::numbersOf(m_lift->next));
    connect(m_stage, &QComboBox::currentIndexChanged, this, &ChangeEditor::chooseStage);
    reviewNumbers();
}

ChangeEditor::~ChangeEditor() = default;

QLineEdit* ChangeEditor::addField(QGridLayout& grid, int row, const QString& name, const QString& unit)
{
    auto* field = new QLineEdit(this);
    auto* caption = rowLabel(name, "secondary", false, this);
    auto* unitLabel = rowLabel(unit, "secondary", false, this);
    field->setAccessibleName(unit.isEmpty() ? name : QStringLiteral("%1, %2").arg(name, unit));
    field->setProperty("caption", QVariant::fromValue(caption));
    field->setProperty("unit", QVariant::fromValue(unitLabel));
    caption->setBuddy(field);
    grid.addWidget(caption, row, 0);
    grid.addWidget(field, row, 1);
    grid.addWidget(unitLabel, row, 2);
    connect(field, &QLineEdit::textChanged, this, &ChangeEditor::reviewNumbers);
    return field;
}

QWidget* ChangeEditor::firstField() const
{
    return m_numbers->load->isVisibleTo(this) ? static_cast<QWidget*>(m_numbers->load) : m_stage;
}

void ChangeEditor::chooseStage()
{
    const auto stage = static_cast<Stage>(m_stage->currentData().toInt());
    fill(stage == m_lift->next.stage ? progression::numbersOf(m_lift->next) : progression::numbersAt(m_lift->machine, stage, m_lift->day));
    reviewNumbers();
}

void ChangeEditor::fill(const CoachNumbers& numbers)
{
    const auto put = [](QLineEdit* field, bool isShown, const QString& text) {
        field->setText(text);
        setShown(field, isShown);
    };
    const auto amount = [this](base::Reps reps) {
        return QString::number(amountFor(reps, m_lift->machine.kit().measure, m_lift->machine.setup().policy));
    };
    put(m_numbers->load, numbers.load.has_value(), numbers.load ? common::numberText(*numbers.load) : QString());
    put(m_numbers->reps, numbers.reps.has_value(), numbers.reps ? amount(*numbers.reps) : QString());
    put(m_numbers->sets, numbers.sets.has_value(), numbers.sets ? QString::number(numbers.sets->value()) : QString());
    put(m_numbers->rest, numbers.rest.has_value(), numbers.rest ? common::restText(*numbers.rest) : QString());
}

std::optional<CoachNumbers> ChangeEditor::numbers() const
{
    if (!faultOfFields().isEmpty()) {
        return std::nullopt;
    }
    const auto isUsed = [this](const QLineEdit* field) { return field->isVisibleTo(this); };
    CoachNumbers numbers;
    numbers.stage = static_cast<Stage>(m_stage->currentData().toInt());
    if (isUsed(m_numbers->load)) {
        numbers.load = loadOf(m_numbers->load->text());
    }
    if (isUsed(m_numbers->reps)) {
        const int amount = *wholeNumberOf(m_numbers->reps->text(), 1, 9999);
        numbers.reps = base::Reps(progression::repsOf(amount, m_lift->machine.kit().measure, m_lift->machine.setup().policy));
    }
    if (isUsed(m_numbers->sets)) {
        numbers.sets = base::Sets(*wholeNumberOf(m_numbers->sets->text(), 1, kMostSets));
    }
    if (isUsed(m_numbers->rest)) {
        numbers.rest = restOf(m_numbers->rest->text());
    }
    return numbers;
}

QString ChangeEditor::faultOfFields() const
{
    const auto isUsed = [this](const QLineEdit* field) { return field->isVisibleTo(this); };
    const auto load = loadOf(m_numbers->load->text());
    const lifts::LoadTable& loads = m_lift->machine.loads();
    const bool isListed = load && (loads.canGive(*load) || load == m_lift->next.load);
    const auto amount = wholeNumberOf(m_numbers->reps->text(), 1, 9999);
    const int reps = amount ? progression::repsOf(*amount, m_lift->machine.kit().measure, m_lift->machine.setup().policy) : 0;
    const bool isReps = reps >= 1 && reps <= kMostReps;
    const bool isSets = wholeNumberOf(m_numbers->sets->text(), 1, kMostSets).has_value();
    const bool isRest = restOf(m_numbers->rest->text()).has_value();
    mark(*m_numbers->load, isUsed(m_numbers->load) && !isListed);
    mark(*m_numbers->reps, isUsed(m_numbers->reps) && !isReps);
    mark(*m_numbers->sets, isUsed(m_numbers->sets) && !isSets);
    mark(*m_numbers->rest, isUsed(m_numbers->rest) && !isRest);
    if (isUsed(m_numbers->load) && !isListed) {
        return load ? nearestLoadsText(loads, *load, m_lift->machine.setup().unit) : tr("The load is a number, as 77.5.");
    }
    if (isUsed(m_numbers->reps) && !isReps) {
        return tr("Reps go from 1 to %1.").arg(amountTextOf(*m_lift, base::Reps(kMostReps)));
    }
    if (isUsed(m_numbers->sets) && !isSets) {
        return tr("Sets go from 1 to %1.").arg(kMostSets);
    }
    return isUsed(m_numbers->rest) && !isRest ? tr("The rest is written as 2:30 or as seconds.") : QString();
}

QString ChangeEditor::hintFor(const CoachNumbers& numbers) const
{
    if (numbers == progression::numbersOf(m_lift->next)) {
        return tr("These are the numbers of the rule.");
    }
    if (m_lift->next.kind != progression::PrescriptionKind::Work) {
        return tr("The rule says %1 without load. Say why, so the check-in can see it.").arg(common::stageName(m_lift->next.stage));
    }
    const progression::Policy& policy = m_lift->machine.setup().policy;
    const base::Load step = m_lift->machine.setup().region == lifts::Region::Upper ? policy.stepUpper : policy.stepLower;
    const QString rule = tr("The rule says %1, %2.").arg(loadTextOf(*m_lift, m_lift->next.load), setsTextOf(*m_lift, m_lift->next));
    const QString why = tr("Say why, so the check-in can see it.");
    if (numbers.load && *numbers.load - m_lift->next.load > step) {
        return QStringLiteral("%1 %2 %3").arg(rule, tr("The largest step here is %1.").arg(loadTextOf(*m_lift, step)), why);
    }
    return QStringLiteral("%1 %2").arg(rule, why);
}

bool ChangeEditor::isReady() const
{
    const auto chosen = numbers();
    return chosen && *chosen != progression::numbersOf(m_lift->next);
}

void ChangeEditor::reviewNumbers()
{
    const QString fault = faultOfFields();
    setFault({});
    setHint(fault.isEmpty() ? hintFor(*numbers()) : fault);
    const auto load = loadOf(m_numbers->load->text());
    setAcceptText(load && m_numbers->load->isVisibleTo(this) ? tr("Use %1").arg(common::numberText(*load)) : tr("Use these"));
    review();
}

std::optional<progression::CoachSet> ChangeEditor::event() const
{
    const auto chosen = numbers();
    if (!chosen || *chosen == progression::numbersOf(m_lift->next)) {
        return std::nullopt;
    }
    progression::CoachSet set = coachSetOf(*chosen, note().toStdString());
    if (set.load && !m_lift->machine.loads().canGive(*set.load)) {
        set.load.reset();  // it is the present load: left out, it stays
    }
    return set;
}

}  // namespace chalk::ui::board
