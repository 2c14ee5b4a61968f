#pragma once

#include "ui/common/act_history.h"

#include <QWidget>

#include <optional>

class QAbstractButton;
class QLabel;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::shell {

/// The right end of the ledge: for ten minutes what was done last, in words, with a button that takes it back (or does it again
/// where it was taken back); after that when the last change was saved. A change that could not be taken back says why.
class LedgeNote : public QWidget {
    Q_OBJECT

public:
    static constexpr int kUndoMinutes = 10;
    static constexpr int kNewsMinutes = 2;

    LedgeNote(const common::Look& look, common::ActHistory& acts, QWidget* parent = nullptr);

    /// The clock moved on.
    void setMinute(int minuteOfDay);
    /// How wide it would be, with the text as long as it may get.
    [[nodiscard]] double wantedWidth() const;
    /// Its text is elided where it would be wider than that; the button never is.
    void setRoom(double width);
    /// The words on show; empty where there is nothing to say.
    [[nodiscard]] QString words() const;
    [[nodiscard]] QAbstractButton* button() const { return m_button; }
    /// Says what could not be done, until something is done; told to screen readers. Empty where the trouble is over.
    void sayTrouble(const QString& reason);
    /// Says what happened by itself, as the end of a rest, for two minutes or until something is done; told to screen readers.
    void sayNews(const QString& news);

Q_SIGNALS:
    /// It says something else now, and wantedWidth() may be another.
    void wordsChanged();

private:
    enum class Kind : std::uint8_t { Nothing, Done, TakenBack, Saved, Trouble, News };

    void readActs();
    void say(Kind kind, const QString& html);
    void tell(const QString& words);
    [[nodiscard]] bool isNewsFresh() const;
    [[nodiscard]] double widthBesideText() const;
    void dress();
    void act();

    const common::Look& m_look;
    common::ActHistory& m_acts;
    std::optional<double> m_room;  ///< none: nobody said
    int m_minute = 0;
    int m_newsMinute = 0;
    Kind m_kind = Kind::Nothing;
    QString m_html;
    QLabel* m_icon;
    QLabel* m_text;
    QAbstractButton* m_button;
};

}  // namespace chalk::ui::shell
