#include "ui/common/versions_dialog.h"

#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::common {

namespace {

constexpr int kVersionsMargin = 20;
constexpr int kVersionsSpacing = 12;
constexpr int kVersionsLeastWidth = 620;
constexpr int kVersionsMostHeight = 340;

QLabel* wrappingLabel(const QString& text, const char* role, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    if (role != nullptr) {
        label->setProperty("role", QString::fromLatin1(role));
    }
    return label;
}

QLabel* boldLabel(const QString& text, QWidget* parent)
{
    QLabel* label = wrappingLabel(text, nullptr, parent);
    QFont font = label->font();
    font.setWeight(QFont::DemiBold);
    label->setFont(font);
    return label;
}

}  // namespace

VersionsDialog::VersionsDialog(const Question& question, QWidget* parent) : QDialog(parent), m_answer(question.safeAnswer)
{
    setWindowTitle(tr("Two versions"));
    setAccessibleName(question.headline);
    setMinimumWidth(kVersionsLeastWidth);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kVersionsMargin, kVersionsMargin, kVersionsMargin, kVersionsMargin);
    column->setSpacing(kVersionsSpacing);
    column->addWidget(boldLabel(question.headline, this));
    column->addWidget(wrappingLabel(question.text, "secondary", this));
    column->addWidget(table(question), 1);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    addButtons(question, *row);
    column->addLayout(row);
}

QWidget* VersionsDialog::table(const Question& question)
{
    auto* rows = new QWidget;
    auto* grid = new QGridLayout(rows);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(2 * kVersionsSpacing);
    grid->setVerticalSpacing(kVersionsSpacing / 2);
    grid->addWidget(boldLabel(tr("Yours"), rows), 0, 1);
    grid->addWidget(boldLabel(tr("Theirs"), rows), 0, 2);
    for (std::size_t i = 0; i < question.versions.size(); ++i) {
        addRow(*grid, static_cast<int>(i) + 1, question.versions[i]);
    }
    grid->setColumnStretch(0, 2);
    grid->setColumnStretch(1, 3);
    grid->setColumnStretch(2, 3);
    grid->setRowStretch(static_cast<int>(question.versions.size()) + 1, 1);
    auto* scroll = new QScrollArea(this);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(rows);
    scroll->setMinimumHeight(std::min(rows->sizeHint().height() + kVersionsSpacing, kVersionsMostHeight));
    scroll->setAccessibleName(tr("Both versions"));
    return scroll;
}

void VersionsDialog::addRow(QGridLayout& grid, int row, const VersionRow& version)
{
    QWidget* parent = grid.parentWidget();
    grid.addWidget(wrappingLabel(version.field, "muted", parent), row, 0);
    const auto addVersion = [&](int column, const QString& text, const QString& whose) {
        QLabel* label = wrappingLabel(text.isEmpty() ? tr("nothing") : text, text.isEmpty() ? "muted" : nullptr, parent);
        label->setAccessibleName(QStringLiteral("%1, %2: %3").arg(version.field, whose, label->text()));
        grid.addWidget(label, row, column);
    };
    addVersion(1, version.yours, tr("yours"));
    addVersion(2, version.theirs, tr("theirs"));
}

void VersionsDialog::addButtons(const Question& question, QHBoxLayout& row)
{
    for (int i = 0; i < question.answers.size(); ++i) {
        auto* button = new QPushButton(question.answers.at(i), this);
        button->setAutoDefault(true);
        connect(button, &QPushButton::clicked, this, [this, i] {
            m_answer = i;
            accept();
        });
        row.addWidget(button);
        m_buttons.push_back(button);
    }
    if (question.safeAnswer < static_cast<int>(m_buttons.size())) {
        QPushButton* safe = m_buttons[static_cast<std::size_t>(question.safeAnswer)];
        safe->setDefault(true);
        safe->setFocus(Qt::OtherFocusReason);
    }
}

}  // namespace chalk::ui::common
