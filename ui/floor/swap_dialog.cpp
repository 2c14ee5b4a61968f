#include "ui/floor/swap_dialog.h"

#include "ui/common/look.h"
#include "ui/decisions/swap_editor.h"

#include <QVBoxLayout>

namespace chalk::ui::floor {

namespace {

constexpr double kSwapWidth = 420;
constexpr double kSwapHeight = 480;

}  // namespace

SwapDialog::SwapDialog(const common::Look& look, const decisions::SwappedLift& lift, const std::vector<decisions::SwapOffer>& offers, Write write,
                       QWidget* parent)
    : QDialog(parent), m_write(std::move(write)), m_editor(new decisions::SwapEditor(look, lift, offers, this))
{
    setWindowTitle(tr("Swap the exercise"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_editor);
    connect(m_editor, &decisions::SwapEditor::accepted, this, &SwapDialog::swap);
    connect(m_editor, &decisions::SwapEditor::cancelled, this, &QDialog::reject);
    resize(qRound(look.theme().scaled(kSwapWidth)), qRound(look.theme().scaled(kSwapHeight)));
    m_editor->firstField()->setFocus(Qt::OtherFocusReason);
}

void SwapDialog::sayFault(const QString& fault)
{
    m_editor->setFault(fault);
}

void SwapDialog::swap()
{
    const auto event = m_editor->event();
    if (!event) {
        return;
    }
    const QString refusal = m_write(*event, m_editor->chosenName());
    if (refusal.isEmpty()) {
        accept();
    } else {
        sayFault(refusal);
    }
}

}  // namespace chalk::ui::floor
