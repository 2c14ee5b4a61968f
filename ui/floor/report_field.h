#pragma once

#include <QLineEdit>

#include <optional>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::floor {

/// What a field of a session's report takes.
enum class ReportFieldKind : std::uint8_t {
    Scale,    ///< 1 to 5: a digit takes the place of the one before and is said at once
    Effort,   ///< 0 to 10 in halves: `7.5`, `7,5`
    Minutes,  ///< 1 to 480
    Note      ///< a line of words; lines of the note stand behind each other
};

/// One small field of a session's report: it is said when the field is left or Enter is pressed, a scale at the digit.
class ReportField : public QLineEdit {
    Q_OBJECT

public:
    ReportField(const common::Look& look, ReportFieldKind kind, const QString& name, QWidget* parent = nullptr);

    /// The value of a number field, effort in tenths; nothing where it is empty. Shown unless something else is being typed.
    void showNumber(std::optional<int> value);
    void showWords(const QString& words);
    /// Marks what is typed as something that cannot be.
    void setFaulty(bool isFaulty);
    /// Shows what was said last again.
    void reset();

    /// Whether something is typed that was not said yet.
    [[nodiscard]] bool isPending() const { return text() != m_said; }
    /// Whether what is typed can be.
    [[nodiscard]] bool isSound() const;
    /// As typed, or as said before where what is typed cannot be.
    [[nodiscard]] std::optional<int> number() const;
    [[nodiscard]] QString words() const;
    /// What can be typed: `0 to 10, halves as 7.5`.
    [[nodiscard]] QString rangeText() const;

    /// Wide enough for all that can be typed; a note for a few words, and it takes `width` pixels where that is more.
    void stretchTo(int width);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    /// What is typed may be said now.
    void given();
    /// Enter was pressed: work goes on elsewhere.
    void left();

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] std::optional<int> numberIn(const QString& text) const;
    [[nodiscard]] QString textFor(std::optional<int> value) const;
    void show(const QString& text);
    bool takeDigit(QKeyEvent* event);

    const common::Look& m_look;
    ReportFieldKind m_kind;
    QString m_said;
    int m_width = 0;
};

}  // namespace chalk::ui::floor
