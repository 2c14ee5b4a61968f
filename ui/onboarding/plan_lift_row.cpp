#include "ui/onboarding/plan_lift_row.h"

#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/onboarding/plan_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QSignalBlocker>
#include <QStandardItemModel>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr double kNameColumn = 124;
constexpr double kLoadColumn = 132;

}  // namespace

PlanLiftRow::PlanLiftRow(const common::Look& look, lifts::Pattern pattern, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_pattern(pattern),
      m_name(new QLabel(common::patternName(pattern), this)),
      m_stage(new QLabel(this)),
      m_isIn(new QCheckBox(this)),
      m_exercise(new QComboBox(this)),
      m_load(new QComboBox(this)),
      m_equipment(new QComboBox(this)),
      m_why(new QLabel(this)),
      m_whyLeftOut(new QLineEdit(this)),
      m_way(new common::ActionButton(look, QString(), this)),
      m_begin(new common::ActionButton(look, tr("Begin this lift"), this))
{
    build();
    layOut();
    connect(m_exercise, &QComboBox::activated, this, [this](int index) { Q_EMIT exerciseChosen(m_exercise->itemData(index).toString().toStdString()); });
    connect(m_equipment, &QComboBox::activated, this, [this](int index) { Q_EMIT equipmentChosen(m_equipment->itemData(index).toString().toStdString()); });
    connect(m_load, &QComboBox::activated, this, [this](int index) {
        const QVariant centi = m_load->itemData(index);
        Q_EMIT firstLoadChosen(centi.isValid() ? std::optional(base::Load::fromCenti(centi.toInt())) : std::nullopt);
    });
    connect(m_isIn, &QCheckBox::clicked, this, [this](bool isIn) { Q_EMIT leftOut(!isIn); });
    connect(m_whyLeftOut, &QLineEdit::editingFinished, this, [this] { Q_EMIT whyLeftOut(m_whyLeftOut->text().trimmed()); });
    connect(m_way, &QPushButton::clicked, this, [this] { Q_EMIT wayOutAsked(m_wayOut); });
    connect(m_begin, &QPushButton::clicked, this, &PlanLiftRow::beginAsked);
}

void PlanLiftRow::build()
{
    const QString name = m_name->text();
    m_name->setProperty("role", QStringLiteral("strong"));
    m_name->setWordWrap(true);
    m_stage->setProperty("role", QStringLiteral("muted"));
    m_why->setProperty("role", QStringLiteral("secondary"));
    m_why->setWordWrap(true);
    m_isIn->setAccessibleName(tr("%1 is in the plan").arg(name));
    m_isIn->setToolTip(m_isIn->accessibleName());
    m_exercise->setAccessibleName(tr("Exercise for %1").arg(name));
    m_equipment->setAccessibleName(tr("Equipment for %1").arg(name));
    m_load->setAccessibleName(tr("First load for %1").arg(name));
    for (QComboBox* box : {m_exercise, m_equipment}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    }
    m_load->setMinimumWidth(qRound(m_look.theme().scaled(kLoadColumn)));
    m_whyLeftOut->setAccessibleName(tr("Why %1 is left out").arg(name));
    m_whyLeftOut->setPlaceholderText(tr("Why, for whoever coaches next"));
    m_way->setButtonSize(common::ButtonSize::Small);
    m_begin->setButtonSize(common::ButtonSize::Small);
    m_begin->setAccessibleName(tr("Begin %1").arg(name));
}

void PlanLiftRow::layOut()
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 8, 16, 9);
    row->setSpacing(10);
    row->addWidget(m_isIn, 0, Qt::AlignTop);
    auto* names = new QVBoxLayout;
    names->setSpacing(2);
    names->addWidget(m_name);
    names->addWidget(m_stage);
    names->addStretch();
    m_name->setFixedWidth(qRound(m_look.theme().scaled(kNameColumn)));
    row->addLayout(names);
    auto* work = new QVBoxLayout;
    work->setSpacing(4);
    const auto addLine = [work](std::initializer_list<QWidget*> wide, std::initializer_list<QWidget*> narrow) {
        auto* line = new QHBoxLayout;
        line->setSpacing(10);
        for (QWidget* widget : wide) {
            line->addWidget(widget, 1);
        }
        for (QWidget* widget : narrow) {
            line->addWidget(widget);
        }
        work->addLayout(line);
        return line;
    };
    addLine({m_exercise}, {m_load});
    work->addWidget(m_why);
    addLine({m_equipment, m_whyLeftOut}, {m_way, m_begin})->addStretch();
    work->addStretch();
    row->addLayout(work, 1);
}

void PlanLiftRow::setDesk(const PlanDesk& desk, const lifts::Catalogue& catalogue, base::MassUnit unit, bool isRunning)
{
    const planning::PlannedLift* lift = desk.plan().find(m_pattern);
    const bool isOpen = !isRunning || !desk.hasBegun(m_pattern);
    const bool isLeftOut = desk.draft().of(m_pattern).isLeftOut;
    m_isIn->setChecked(lift != nullptr && (!isRunning || desk.hasBegun(m_pattern)));
    m_isIn->setEnabled(!isRunning && (lift != nullptr || isLeftOut));
    m_exercise->setVisible(lift != nullptr);
    m_exercise->setEnabled(isOpen);
    m_load->setVisible(lift != nullptr && lift->kind == planning::PlannedKind::Work && !lift->equipmentKey.empty());
    m_load->setEnabled(isOpen);
    m_whyLeftOut->setVisible(isLeftOut && !isRunning);
    m_begin->setVisible(isRunning && isOpen && lift != nullptr);
    showGap(desk, catalogue, isRunning);
    fillEquipment(desk, lift);
    m_equipment->setEnabled(isOpen);
    if (!m_whyLeftOut->hasFocus()) {
        m_whyLeftOut->setText(common::qstring(desk.draft().of(m_pattern).whyLeftOut));
    }
    if (lift == nullptr) {
        m_stage->clear();
        return;
    }
    m_stage->setText(QStringLiteral("%1 %2").arg(progression::numberOf(lift->stage)).arg(common::stageName(lift->stage)));
    m_why->setText(QStringLiteral("%1. %2").arg(liftDoes(*lift, catalogue, unit), liftReason(*lift, catalogue)));
    fillExercises(desk, lift);
    fillLoads(desk, lift, unit);
}

void PlanLiftRow::showGap(const PlanDesk& desk, const lifts::Catalogue& catalogue, bool isRunning)
{
    const auto& gaps = desk.plan().gaps;
    const auto gap = std::find_if(gaps.begin(), gaps.end(), [this](const planning::PatternGap& one) { return one.pattern == m_pattern; });
    const bool isLeftOut = desk.draft().of(m_pattern).isLeftOut;
    m_wayOut = gap == gaps.end() || isLeftOut ? WayOut::None : wayOutOf(*gap);
    m_way->setVisible(m_wayOut != WayOut::None && !(isRunning && desk.hasBegun(m_pattern)));
    m_way->setText(wayOutText(m_wayOut));
    m_way->setAccessibleName(tr("%1: %2").arg(m_name->text(), m_way->text()));
    if (gap != gaps.end()) {
        m_why->setText(gapReason(*gap, catalogue, isLeftOut));
    }
}

void PlanLiftRow::fillEquipment(const PlanDesk& desk, const planning::PlannedLift* lift)
{
    const QSignalBlocker quiet(m_equipment);
    m_equipment->clear();
    const auto offers = lift == nullptr ? std::vector<EquipmentOffer>() : desk.equipmentFor(*lift);
    m_equipment->setVisible(offers.size() > 1 && !lift->equipmentKey.empty());
    for (const EquipmentOffer& offer : offers) {
        m_equipment->addItem(offer.name, common::qstring(offer.key));
        if (offer.key == lift->equipmentKey) {
            m_equipment->setCurrentIndex(m_equipment->count() - 1);
        }
    }
}

void PlanLiftRow::fillExercises(const PlanDesk& desk, const planning::PlannedLift* lift)
{
    const QSignalBlocker quiet(m_exercise);
    m_exercise->clear();
    const planning::PlannedLift* suggested = desk.suggestion().find(m_pattern);
    for (const ExerciseOffer& offer : desk.offersFor(m_pattern)) {
        QString text = common::qstring(offer.exercise->name);
        const bool isSuggested = suggested != nullptr && suggested->exerciseKey == offer.exercise->key;
        if (!offer.whyNot.isEmpty()) {
            text = tr("%1 — %2").arg(text, offer.whyNot);
        } else if (isSuggested) {
            text = tr("%1 (suggested)").arg(text);
        }
        m_exercise->addItem(text, isSuggested ? QString() : common::qstring(offer.exercise->key));
        if (!offer.whyNot.isEmpty()) {
            if (auto* model = qobject_cast<QStandardItemModel*>(m_exercise->model())) {
                model->item(m_exercise->count() - 1)->setEnabled(false);
            }
        }
        if (offer.exercise->key == lift->exerciseKey) {
            m_exercise->setCurrentIndex(m_exercise->count() - 1);
        }
    }
}

void PlanLiftRow::fillLoads(const PlanDesk& desk, const planning::PlannedLift* lift, base::MassUnit unit)
{
    const QSignalBlocker quiet(m_load);
    m_load->clear();
    const auto loads = desk.loadsFor(*lift);
    for (const base::Load load : loads) {
        const bool isLightest = load == loads.front();
        m_load->addItem(isLightest ? tr("%1, lightest").arg(common::loadText(load, unit)) : common::loadText(load, unit), isLightest ? QVariant() : QVariant(load.centi()));
        if (lift->firstLoad == load) {
            m_load->setCurrentIndex(m_load->count() - 1);
        }
    }
}

void PlanLiftRow::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.fillRect(QRect(0, height() - 1, width(), 1), m_look.theme().line);
}

}  // namespace chalk::ui::onboarding
