#include "ui/check_in/choice_row.h"
#include "ui/check_in/decision_form.h"
#include "ui/check_in/form_facts.h"
#include "ui/check_in/queue_model.h"
#include "ui/common/banner.h"
#include "ui/common/check_in_words.h"
#include "ui/common/forecast_words.h"

#include <QCoreApplication>
#include <QLabel>
#include <QVBoxLayout>

// What the form of a decision shows of a page.

namespace chalk::ui::check_in {

using checkin::Choice;

namespace {

QString suggestedText(const Choice& choice)
{
    return QStringLiteral("%1 %2").arg(QCoreApplication::translate("CheckInForm", "Suggested."), common::choiceReasonText(choice.why)).trimmed();
}

}  // namespace

void DecisionForm::showFinding()
{
    m_finding->setVisible(m_page != nullptr);
    m_numbers->hide();
    m_historyTitle->hide();
    m_history->hide();
    if (m_page == nullptr) {
        return;
    }
    const FindingWords words = findingWordsOf(*m_page, m_lift);
    const checkin::FindingKind kind = m_page->evidence.finding.kind;
    m_finding->setMessage({signalOf(kind), iconOf(kind), words.title + QLatin1Char('.'), words.first});
    m_numbers->setText(words.numbers);
    m_numbers->setVisible(!words.numbers.isEmpty());
    const QString history = historyText(m_page->evidence);
    m_history->setText(history);
    m_history->setVisible(!history.isEmpty());
    m_historyTitle->setVisible(!history.isEmpty());
}

void DecisionForm::showForecast()
{
    const bool hasForecast = lift() != nullptr && m_lift < m_page->forecasts.size();
    m_forecastTitle->setVisible(hasForecast);
    m_forecast->setVisible(hasForecast);
    if (hasForecast) {
        const LiftForecast& forecast = m_page->forecasts[m_lift];
        m_forecast->setText(forecast ? common::forecastText(*forecast, *lift(), m_catalogue) : common::forecastLackText(forecast.error()));
    }
}

void DecisionForm::showChoices()
{
    const std::size_t count = lift() == nullptr ? 0 : lift()->choices.size();
    m_choicesTitle->setVisible(count > 0);
    while (m_rows.size() < count) {
        auto* row = new ChoiceRow(m_look, this);
        const std::size_t place = m_rows.size();
        connect(row, &QAbstractButton::clicked, this, [this, place] { choose(place); });
        m_rowsColumn->addWidget(row);
        m_rows.push_back(row);
    }
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        m_rows[i]->setVisible(i < count);
        if (i >= count) {
            continue;
        }
        const Choice& choice = lift()->choices[i];
        const auto edited = m_edited.find(i);
        m_rows[i]->setView({common::choiceTitle(choice), edited == m_edited.end() ? common::choiceText(choice, *lift(), m_catalogue) : edited->second.text,
                            choice.isSuggested ? suggestedText(choice) : QString(), QString::number(i + 1)});
        m_rows[i]->setChecked(m_choice == i);
    }
}

}  // namespace chalk::ui::check_in
