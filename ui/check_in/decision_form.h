#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "ui/check_in/check_in_desk.h"
#include "ui/common/panel.h"
#endif

#include <map>

class QLabel;
class QPlainTextEdit;
class QStackedLayout;
class QVBoxLayout;

namespace chalk::ui::common {
class ActionButton;
class Banner;
class Look;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::decisions {
class CoachEditor;
}

namespace chalk::ui::check_in {

class ChoiceRow;

/// The decision about one lift at a check-in: what was found, up to seven choices, when it is looked at again, a note. Numbers by hand and a
/// swap open their editor in its place. A swapped lift has to be answered for before anything is decided.
class DecisionForm : public common::Panel {
    Q_OBJECT

public:
    /// Both outlive the form.
    DecisionForm(const common::Look& look, const lifts::Catalogue& catalogue, QWidget* parent = nullptr);
    ~DecisionForm() override;

    /// The page and the lift on show; null for none. The page outlives the next call. What was typed stays while client, lift and day do.
    void setPage(const CheckInCase* page, std::size_t lift, base::Date day);

    /// Chooses by place, 0 the first; opens the editor where the choice needs one, and where it is chosen once more.
    void choose(std::size_t choice);
    /// What is settled; nothing where something is missing, see missingText.
    [[nodiscard]] std::optional<DecisionDraft> draft() const;
    /// What has to be done before anything can be decided; empty where nothing has to.
    [[nodiscard]] QString missingText() const;
    /// The choice that is on, with what an editor made of it; nothing for none.
    [[nodiscard]] std::optional<checkin::Choice> chosen() const;
    [[nodiscard]] base::Date nextReview() const;
    /// Answers whether a swapped lift is the same movement.
    void answerVariation(bool isSameMovement);
    void setNote(const QString& note);
    /// Says why something could not be written; empty takes it away.
    void setFault(const QString& fault);

    /// Puts an editor in the place of the form; the form owns it.
    void openEditor(decisions::CoachEditor* editor);
    [[nodiscard]] bool isEditing() const;
    void closeEditor();
    /// What an editor made of the choice that is on, and the words for what it leads to.
    void setEdited(const progression::EventBody& event, const QString& text);

Q_SIGNALS:
    void decideAsked();
    void skipAsked();
    /// A choice needs its editor.
    void editorAsked(chalk::checkin::ChoiceKind kind);
    /// What draft() says may be different.
    void changed();

private:
    struct Edited {
        progression::EventBody event;
        QString text;
    };

    void build();
    void buildQuestion(QVBoxLayout& column);
    void buildReview(QVBoxLayout& column);
    void buildFoot();
    void showFinding();
    void showForecast();
    void showChoices();
    void takeSuggestion();
    [[nodiscard]] std::optional<progression::EventBody> eventOf(const checkin::Choice& choice, const QString& note) const;
    void review();
    [[nodiscard]] const checkin::LiftEvidence* lift() const;
    [[nodiscard]] bool isVariationAsked() const;

    const common::Look& m_look;
    const lifts::Catalogue& m_catalogue;
    const CheckInCase* m_page = nullptr;
    std::size_t m_lift = 0;
    base::Date m_day;
    base::ClientId m_client;
    base::LiftId m_liftId;
    std::optional<std::size_t> m_choice;
    std::map<std::size_t, Edited> m_edited;  ///< by place of the choice

    QStackedLayout* m_stack = nullptr;
    QVBoxLayout* m_editorHost = nullptr;
    decisions::CoachEditor* m_editor = nullptr;
    common::Banner* m_finding = nullptr;
    QLabel* m_numbers = nullptr;
    QLabel* m_choicesTitle = nullptr;
    QVBoxLayout* m_rowsColumn = nullptr;
    std::vector<ChoiceRow*> m_rows;
    QWidget* m_question = nullptr;
    common::SegmentedChoice* m_answer = nullptr;
    common::SegmentedChoice* m_weeks = nullptr;
    QLabel* m_reviewDay = nullptr;
    QPlainTextEdit* m_note = nullptr;
    QLabel* m_forecastTitle = nullptr;
    QLabel* m_forecast = nullptr;
    QLabel* m_historyTitle = nullptr;
    QLabel* m_history = nullptr;
    QLabel* m_missing = nullptr;
    common::Banner* m_fault = nullptr;
    common::ActionButton* m_skip = nullptr;
    common::ActionButton* m_decide = nullptr;
};

}  // namespace chalk::ui::check_in
