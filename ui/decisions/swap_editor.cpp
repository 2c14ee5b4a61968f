#include "ui/decisions/swap_editor.h"

#include "core/progression/swap_to.h"
#include "ui/common/formats.h"
#include "ui/common/style_sheet.h"
#include "ui/decisions/number_entry.h"
#include "ui/decisions/swap_offers.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

namespace chalk::ui::decisions {

namespace {

constexpr int kListHeight = 260;

QString difficultyText(const lifts::Exercise& other, const lifts::Exercise& now)
{
    if (now.rung == 0 || other.rung == now.rung) {
        return SwapEditor::tr("as hard");
    }
    return other.rung < now.rung ? SwapEditor::tr("easier") : SwapEditor::tr("harder");
}

QString offerText(const SwapOffer& offer, const lifts::Exercise& now)
{
    const QString with = offer.equipmentName.empty() ? SwapEditor::tr("no equipment") : common::qstring(offer.equipmentName);
    return QStringLiteral("%1\n%2 · %3").arg(common::qstring(offer.exercise->name), difficultyText(*offer.exercise, now), with);
}

QLabel* secondaryLabel(const QString& text, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setProperty("role", QStringLiteral("secondary"));
    return label;
}

}  // namespace

SwapEditor::SwapEditor(const common::Look& look, const SwappedLift& lift, const std::vector<SwapOffer>& offers, QWidget* parent)
    : CoachEditor(look, tr("Swap %1").arg(common::qstring(lift.exercise.name).toLower()), {}, parent),
      m_lift(std::make_unique<SwappedLift>(lift)),
      m_offers(offers),
      m_list(new QListWidget(this)),
      m_start(new QLineEdit(this))
{
    noteField()->hide();
    m_list->setAccessibleName(tr("Exercises that fit"));
    m_list->setWordWrap(true);
    m_list->setSpacing(2);
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setMinimumHeight(kListHeight);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_start->setAccessibleName(tr("Start at"));
    auto* startRow = new QHBoxLayout;
    startRow->addWidget(secondaryLabel(tr("Start at"), this));
    startRow->addWidget(m_start);
    startRow->addWidget(secondaryLabel(common::unitText(lift.unit), this));
    startRow->addStretch();
    fields()->addWidget(m_list);
    fields()->addLayout(startRow);
    fillList();
    connect(m_list, &QListWidget::currentRowChanged, this, &SwapEditor::reviewChoice);
    connect(m_start, &QLineEdit::textChanged, this, &SwapEditor::reviewChoice);
    reviewChoice();
}

SwapEditor::~SwapEditor() = default;

void SwapEditor::fillList()
{
    for (const SwapOffer& offer : m_offers) {
        m_list->addItem(offerText(offer, m_lift->exercise));
    }
    if (!m_offers.empty()) {
        m_list->setCurrentRow(0);
    }
}

QWidget* SwapEditor::firstField() const
{
    return m_list;
}

const SwapOffer* SwapEditor::chosen() const
{
    const int row = m_list->currentRow();
    return row < 0 ? nullptr : &m_offers[static_cast<std::size_t>(row)];
}

QString SwapEditor::chosenName() const
{
    const SwapOffer* offer = chosen();
    return offer == nullptr ? QString() : common::qstring(offer->exercise->name);
}

QString SwapEditor::startFault() const
{
    const SwapOffer* offer = chosen();
    if (offer == nullptr || m_start->text().trimmed().isEmpty()) {
        return {};
    }
    const auto loads = lifts::LoadTable::of(offer->equipment);
    const auto load = loadOf(m_start->text());
    if (!load) {
        return tr("The load is a number, as 77.5.");
    }
    return loads && !loads->canGive(*load) ? nearestLoadsText(*loads, *load, m_lift->unit) : QString();
}

bool SwapEditor::isReady() const
{
    return chosen() != nullptr && startFault().isEmpty();
}

void SwapEditor::reviewChoice()
{
    const QString fault = startFault();
    m_start->setProperty("invalid", !fault.isEmpty());
    common::restyle(*m_start);
    setFault({});
    const SwapOffer* offer = chosen();
    if (offer == nullptr) {
        setHint(tr("Nothing else in the catalogue fits this pattern, the equipment and the cautions."));
        setAcceptText(tr("Swap"));
        return review();
    }
    if (const auto loads = lifts::LoadTable::of(offer->equipment)) {
        m_start->setPlaceholderText(common::numberText(loads->lightest()));
    }
    const bool isLoaded = progression::isLoaded(m_lift->stage);
    setHint(!fault.isEmpty() ? fault
            : isLoaded       ? tr("A first load is found again: the lift goes back to Base load.")
                             : tr("The lift stays on its rung."));
    setAcceptText(tr("Swap to this"));
    review();
}

std::optional<progression::Swap> SwapEditor::event() const
{
    const SwapOffer* offer = chosen();
    if (offer == nullptr || !startFault().isEmpty()) {
        return std::nullopt;
    }
    return progression::swapTo(*offer, loadOf(m_start->text()));
}

}  // namespace chalk::ui::decisions
