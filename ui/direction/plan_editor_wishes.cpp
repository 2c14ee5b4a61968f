#include "ui/direction/plan_editor_wishes.h"

#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/plan_words.h"
#include "ui/common/segmented_choice.h"
#include "ui/decisions/number_entry.h"
#include "ui/direction/plan_editor_monday.h"
#include "ui/direction/plan_editor_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::direction {

namespace {

using chalk::direction::Direction;
using chalk::direction::LiftRole;
using chalk::direction::PlanWishes;
using chalk::direction::Wave;

constexpr std::array kRoles{LiftRole::Main, LiftRole::Assistance, LiftRole::Upkeep};
constexpr int kMostSessions = 7;
constexpr int kUsualDays = 2;
constexpr double kSingleWidth = 88;
constexpr double kDaysWidth = 130;

QLabel* wishHead(const QString& text)
{
    auto* head = new QLabel(text);
    head->setProperty("role", QStringLiteral("section"));
    return head;
}

QSpinBox* wishSpin(const QString& name, int least, int most)
{
    auto* spin = new QSpinBox;
    spin->setRange(least, most);
    spin->setKeyboardTracking(false);
    spin->setAccessibleName(name);
    return spin;
}

}  // namespace

PlanEditorWishes::PlanEditorWishes(const common::Look& look, PlanEditorModel& model, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_model(model),
      m_direction(new common::SegmentedChoice(tr("Direction"), {{common::directionName(Direction::Strength)}, {common::directionName(Direction::Physique)},
                                                               {common::directionName(Direction::Movement)}})),
      m_wave(new common::SegmentedChoice(tr("How loads change"), {{tr("Linear")}, {tr("Undulating")}})),
      m_weeks(wishSpin(tr("Weeks"), chalk::direction::kLeastWeeks, chalk::direction::kMostWeeks)),
      m_sessions(wishSpin(tr("Sessions a week"), 1, kMostSessions)),
      m_test(new QCheckBox(tr("Ends with a test"))),
      m_start(new MondayEntry)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(8);
    column->addWidget(planPart());
    column->addWidget(wishHead(tr("Lifts")));
    for (std::size_t fact = 0; fact < model.facts().lifts.size(); ++fact) {
        m_lifts.emplace_back();
        if (model.facts().lifts[fact].canBePlanned()) {
            addLift(*column, fact);
        }
    }
    column->addStretch(1);
    connect(&model, &PlanEditorModel::changed, this, &PlanEditorWishes::follow);
    follow();
}

QWidget* PlanEditorWishes::planPart()
{
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    m_direction->setCompact();
    m_wave->setCompact();
    m_wave->setToolTip(QStringLiteral("%1: %2\n%3: %4").arg(tr("Linear"), common::waveName(Wave::Linear), tr("Undulating"), common::waveName(Wave::Undulating)));
    m_start->setAccessibleName(tr("First Monday"));
    column->addWidget(m_direction);
    column->addWidget(m_wave);
    auto* form = new QFormLayout;
    form->setVerticalSpacing(6);
    form->addRow(tr("Weeks"), m_weeks);
    form->addRow(tr("Sessions a week"), m_sessions);
    form->addRow(tr("First Monday"), m_start);
    column->addLayout(form);
    column->addWidget(m_test);
    connect(m_direction, &common::SegmentedChoice::choiceMade, this,
            [this](int index) { ask([index](PlanWishes& wishes) { wishes.direction = static_cast<Direction>(index); }); });
    connect(m_wave, &common::SegmentedChoice::choiceMade, this, [this](int index) { ask([index](PlanWishes& wishes) { wishes.wave = static_cast<Wave>(index); }); });
    connect(m_weeks, &QSpinBox::valueChanged, this, [this](int weeks) { ask([weeks](PlanWishes& wishes) { wishes.weeks = weeks; }); });
    connect(m_sessions, &QSpinBox::valueChanged, this, [this](int sessions) {
        ask([sessions](PlanWishes& wishes) {
            wishes.sessionsAWeek = sessions;
            for (auto& lift : wishes.lifts) {
                lift.exposures = std::min(lift.exposures, sessions);
            }
        });
    });
    connect(m_start, &QSpinBox::valueChanged, this, [this] { ask([this](PlanWishes& wishes) { wishes.start = m_start->monday(); }); });
    connect(m_start, &MondayEntry::refused, this, [this] { Q_EMIT refused(wishFaultText({"start", {}})); });
    connect(m_test, &QCheckBox::toggled, this, [this](bool isOn) { ask([isOn](PlanWishes& wishes) { wishes.endsWithTest = isOn; }); });
    return part;
}

void PlanEditorWishes::addLift(QVBoxLayout& column, std::size_t fact)
{
    const QString& name = m_model.facts().names[fact];
    const common::Theme& theme = m_look.theme();
    LiftRow row{new QCheckBox(name), new QComboBox, wishSpin(tr("Days a week of %1").arg(name), 1, kMostSessions), new QLineEdit, new QLabel};
    for (const LiftRole role : kRoles) {
        row.role->addItem(common::liftRoleName(role));
    }
    row.role->setAccessibleName(tr("Role of %1").arg(name));
    row.days->setValue(kUsualDays);
    row.days->setSuffix(tr(" a week"));
    row.days->setToolTip(tr("Days a week"));
    row.days->setFixedWidth(qRound(theme.scaled(kDaysWidth)));
    row.single->setAccessibleName(tr("Single of %1").arg(name));
    row.single->setFixedWidth(qRound(theme.scaled(kSingleWidth)));
    row.single->setAlignment(Qt::AlignRight);
    row.origin->setProperty("role", QStringLiteral("secondary"));
    row.origin->setWordWrap(true);
    auto* first = new QHBoxLayout;
    first->setSpacing(6);
    first->addWidget(row.role, 1);
    first->addWidget(row.days);
    auto* second = new QHBoxLayout;
    second->setSpacing(8);
    second->addWidget(new QLabel(tr("Single")));
    second->addWidget(row.single);
    second->addWidget(row.origin, 1);
    column.addWidget(row.isIn);
    column.addLayout(first);
    column.addLayout(second);
    m_lifts[fact] = row;
    connect(row.isIn, &QCheckBox::toggled, this, [this, fact] { askLift(fact); });
    connect(row.role, &QComboBox::activated, this, [this, fact] { askLift(fact); });
    connect(row.days, &QSpinBox::valueChanged, this, [this, fact] { askLift(fact); });
    connect(row.single, &QLineEdit::editingFinished, this, [this, fact] { takeSingle(fact); });
}

std::optional<std::size_t> PlanEditorWishes::liftOf(std::size_t fact) const
{
    const auto& lifts = m_model.wishes().lifts;
    const base::LiftId id = m_model.facts().lifts[fact].lift;
    const auto found = std::find_if(lifts.begin(), lifts.end(), [id](const auto& one) { return one.lift == id; });
    return found == lifts.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - lifts.begin()));
}

void PlanEditorWishes::ask(const std::function<void(PlanWishes&)>& change)
{
    PlanWishes wishes = m_model.wishes();
    change(wishes);
    if (wishes != m_model.wishes()) {
        Q_EMIT asked(wishes);
    }
    follow();
}

void PlanEditorWishes::askLift(std::size_t fact)
{
    const LiftRow& row = *m_lifts[fact];
    const auto lift = liftOf(fact);
    ask([&](PlanWishes& wishes) {
        const chalk::direction::PlannedLift wanted{m_model.facts().lifts[fact].lift, kRoles[static_cast<std::size_t>(row.role->currentIndex())],
                                                   std::min(row.days->value(), wishes.sessionsAWeek)};
        if (!row.isIn->isChecked() && lift) {
            wishes.lifts.erase(wishes.lifts.begin() + static_cast<std::ptrdiff_t>(*lift));
        } else if (row.isIn->isChecked() && lift) {
            wishes.lifts[*lift] = wanted;
        } else if (row.isIn->isChecked()) {
            wishes.lifts.push_back(wanted);
        }
    });
}

void PlanEditorWishes::takeSingle(std::size_t fact)
{
    const LiftRow& row = *m_lifts[fact];
    const auto lift = liftOf(fact);
    const auto typed = row.single->text().trimmed().isEmpty() ? base::Load() : decisions::loadOf(row.single->text());
    if (!typed || *typed < base::Load()) {
        Q_EMIT refused(tr("A single is a load, like 102.5. Nothing: the lift stays on the ladder."));
        return followLift(fact);
    }
    if (lift && *typed != shownSingle(*lift)) {  // what stands there rounded is not typed
        m_model.setSingle(*lift, *typed);
    }
}

base::Load PlanEditorWishes::shownSingle(std::size_t lift) const
{
    const base::Load single = m_model.plan().singles[lift].load;
    return m_model.originOf(lift) == SingleOrigin::Estimated ? common::estimateShown(single) : single;
}

QString PlanEditorWishes::originOf(std::size_t fact, std::optional<std::size_t> lift) const
{
    const chalk::direction::LiftForPlan& facts = m_model.facts().lifts[fact];
    const QString unit = common::unitText(facts.machine.setup().unit);
    if (!lift) {
        return unit;
    }
    QString text = QStringLiteral("%1, %2").arg(unit, originText(m_model.originOf(*lift)));
    if (facts.machine.kit().bodyShare.value() > 0) {
        text = tr("%1, with the body").arg(text);
    }
    if (facts.machine.state().isOnHold) {
        return tr("%1. On hold: it joins later").arg(text);
    }
    return progression::isLoaded(facts.machine.state().stage) ? text : tr("%1. Not loaded yet: it joins later").arg(text);
}

void PlanEditorWishes::followLift(std::size_t fact)
{
    if (!m_lifts[fact]) {
        return;
    }
    const LiftRow& row = *m_lifts[fact];
    const auto lift = liftOf(fact);
    const QSignalBlocker quietBox(row.isIn);
    const QSignalBlocker quietDays(row.days);
    const QSignalBlocker quietSingle(row.single);
    row.isIn->setChecked(lift.has_value());
    row.days->setMaximum(m_model.wishes().sessionsAWeek);
    for (QWidget* widget : std::initializer_list<QWidget*>{row.role, row.days, row.single}) {
        widget->setEnabled(lift.has_value());
    }
    row.origin->setText(originOf(fact, lift));
    if (!lift) {
        row.single->clear();
        return;
    }
    const auto& wish = m_model.wishes().lifts[*lift];
    const base::Load single = m_model.plan().singles[*lift].load;
    row.role->setCurrentIndex(static_cast<int>(std::find(kRoles.begin(), kRoles.end(), wish.role) - kRoles.begin()));
    row.days->setValue(wish.exposures);
    row.single->setText(single > base::Load() ? common::numberText(shownSingle(*lift)) : QString());
}

void PlanEditorWishes::follow()
{
    const PlanWishes& wishes = m_model.wishes();
    const bool isStrength = wishes.direction == Direction::Strength;
    const QSignalBlocker quietWeeks(m_weeks);
    const QSignalBlocker quietSessions(m_sessions);
    const QSignalBlocker quietTest(m_test);
    m_direction->setChosen(static_cast<int>(wishes.direction));
    m_wave->setChosen(static_cast<int>(wishes.wave));
    m_wave->setEnabled(isStrength);
    m_weeks->setValue(wishes.weeks);
    m_sessions->setValue(wishes.sessionsAWeek);
    m_test->setChecked(isStrength && wishes.endsWithTest);
    m_test->setEnabled(isStrength);
    m_start->setMonday(wishes.start);
    m_start->setEnabled(!m_model.hasBegun());
    for (std::size_t fact = 0; fact < m_lifts.size(); ++fact) {
        followLift(fact);
    }
}

}  // namespace chalk::ui::direction
