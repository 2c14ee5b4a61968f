#include "ui/onboarding/plan_lift_row.h"

#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/onboarding/plan_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QPainter>
#include <QSignalBlocker>
#include <QStandardItemModel>

namespace chalk::ui::onboarding {

namespace {

constexpr double kNameColumn = 120;
constexpr double kLoadColumn = 132;

}  // namespace

PlanLiftRow::PlanLiftRow(const common::Look& look, lifts::Pattern pattern, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_pattern(pattern),
      m_name(new QLabel(common::patternName(pattern), this)),
      m_stage(new QLabel(this)),
      m_exercise(new QComboBox(this)),
      m_load(new QComboBox(this)),
      m_isIn(new QCheckBox(this)),
      m_why(new QLabel(this))
{
    m_name->setProperty("role", QStringLiteral("strong"));
    m_name->setWordWrap(true);
    m_stage->setProperty("role", QStringLiteral("muted"));
    m_why->setProperty("role", QStringLiteral("secondary"));
    m_why->setWordWrap(true);
    m_isIn->setAccessibleName(tr("%1 is in the plan").arg(m_name->text()));
    m_isIn->setToolTip(m_isIn->accessibleName());
    m_exercise->setAccessibleName(tr("Exercise for %1").arg(m_name->text()));
    m_exercise->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_load->setAccessibleName(tr("First load for %1").arg(m_name->text()));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(16, 8, 16, 9);
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(2);
    grid->addWidget(m_isIn, 0, 0);
    grid->addWidget(m_name, 0, 1);
    grid->addWidget(m_stage, 1, 1, Qt::AlignTop);
    grid->addWidget(m_exercise, 0, 2);
    grid->addWidget(m_load, 0, 3);
    grid->addWidget(m_why, 1, 2, 1, 2);
    grid->setColumnMinimumWidth(1, qRound(look.theme().scaled(kNameColumn)));
    grid->setColumnStretch(2, 1);
    m_load->setMinimumWidth(qRound(look.theme().scaled(kLoadColumn)));
    connect(m_exercise, &QComboBox::activated, this, [this](int index) { Q_EMIT exerciseChosen(m_exercise->itemData(index).toString().toStdString()); });
    connect(m_load, &QComboBox::activated, this, [this](int index) {
        const QVariant centi = m_load->itemData(index);
        Q_EMIT firstLoadChosen(centi.isValid() ? std::optional(base::Load::fromCenti(centi.toInt())) : std::nullopt);
    });
    connect(m_isIn, &QCheckBox::clicked, this, [this](bool isIn) { Q_EMIT leftOut(!isIn); });
}

void PlanLiftRow::setDesk(const PlanDesk& desk, const lifts::Catalogue& catalogue, base::MassUnit unit)
{
    const planning::PlannedLift* lift = desk.plan().find(m_pattern);
    m_isIn->setChecked(!desk.draft().of(m_pattern).isLeftOut);
    m_exercise->setVisible(lift != nullptr);
    m_load->setVisible(lift != nullptr && lift->kind == planning::PlannedKind::Work && !lift->equipmentKey.empty());
    if (lift == nullptr) {
        m_stage->clear();
        for (const planning::PatternGap& gap : desk.plan().gaps) {
            if (gap.pattern == m_pattern) {
                m_why->setText(gapReason(gap, catalogue));
            }
        }
        return;
    }
    m_stage->setText(QStringLiteral("%1 %2").arg(progression::numberOf(lift->stage)).arg(common::stageName(lift->stage)));
    m_why->setText(QStringLiteral("%1. %2").arg(liftDoes(*lift, catalogue, unit), liftReason(*lift, catalogue, unit)));
    fillExercises(desk, lift);
    fillLoads(desk, lift, unit);
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
