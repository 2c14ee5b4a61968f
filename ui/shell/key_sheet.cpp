#include "ui/shell/key_sheet.h"

#include "ui/common/key_cap.h"
#include "ui/common/look.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>

#include <algorithm>

namespace chalk::ui::shell {

namespace {

constexpr int kSheetMargin = 24;

/// The caps of one key hint in a row.
QWidget* capsWidget(const common::Look& look, const QString& keys, QWidget* parent)
{
    auto* caps = new QWidget(parent);
    auto* row = new QHBoxLayout(caps);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(4);
    for (const QString& key : common::keyCapTexts(keys)) {
        row->addWidget(new common::KeyCap(look, {key}, caps));
    }
    row->addStretch();
    return caps;
}

}  // namespace

KeySheet::KeySheet(const common::Look& look, QWidget* window) : Overlay(look, window), m_body(new QWidget(this))
{
    setAccessibleName(tr("Keys of this page"));
}

void KeySheet::start(const std::vector<KeySection>& sections)
{
    delete m_body;
    m_body = new QWidget(this);
    auto* grid = new QGridLayout(m_body);
    grid->setContentsMargins(kSheetMargin, 20, kSheetMargin, kSheetMargin);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(6);
    QStringList words;
    int column = 0;
    for (const KeySection& section : sections) {
        if (section.keys.empty()) {
            continue;
        }
        addSection(section, column);
        grid->setColumnMinimumWidth(column + 2, 28);
        column += 3;
        for (const KeyHint& hint : section.keys) {
            words.append(QStringLiteral("%1: %2").arg(hint.keys, hint.does));
        }
    }
    setAccessibleDescription(words.join(QStringLiteral(", ")));
    m_body->show();
    open();
}

void KeySheet::addSection(const KeySection& section, int column)
{
    auto* grid = static_cast<QGridLayout*>(m_body->layout());
    auto* heading = new QLabel(section.heading, m_body);
    heading->setProperty("role", QStringLiteral("section"));
    grid->addWidget(heading, 0, column, 1, 2);
    int row = 1;
    for (const KeyHint& hint : section.keys) {
        grid->addWidget(capsWidget(look(), hint.keys, m_body), row, column);
        auto* does = new QLabel(hint.does, m_body);
        does->setProperty("role", QStringLiteral("small"));
        grid->addWidget(does, row, column + 1);
        ++row;
    }
    grid->setRowStretch(row, 1);
}

QRect KeySheet::cardRect() const
{
    const QSize size = m_body->sizeHint().boundedTo(this->size() - QSize(48, 48));
    return {(width() - size.width()) / 2, std::max(24, (height() - size.height()) / 3), size.width(), size.height()};
}

void KeySheet::layCard()
{
    m_body->setGeometry(cardRect().adjusted(1, 1, -1, -1));
}

}  // namespace chalk::ui::shell
