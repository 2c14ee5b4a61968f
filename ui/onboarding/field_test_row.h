#pragma once

#include "ui/onboarding/field_test_entry.h"

#include <QWidget>

#include <vector>

class QHBoxLayout;
class QLabel;
class QLineEdit;

namespace chalk::ui::common {
class Look;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

/// One field test: its name and how it is done, what is typed, where that stands, and what it was earlier.
class FieldTestRow : public QWidget {
    Q_OBJECT

public:
    /// `test` says which test, its values are not looked at.
    FieldTestRow(const common::Look& look, const screens::FieldTest& test, QWidget* parent = nullptr);

    [[nodiscard]] const screens::FieldTest& test() const { return m_test; }
    /// What is kept; a field that is being typed in and a row with a fault keep their text.
    void setResult(const std::optional<screens::FieldTest>& kept, const FieldTestPerson& person);
    /// `30 Sep 2026: 11, Average: 11 to 16.`, the newest first.
    void setEarlier(const QStringList& lines);
    /// What the scale showed at the feet last time, or the form of the person: where nothing is typed yet.
    void suggest(const FieldTestTyped& typed);
    [[nodiscard]] tl::expected<std::optional<screens::FieldTest>, FieldTestFault> result() const;
    /// Writes a time as if it was typed.
    void setTime(int ms);
    /// The time of a running stopwatch instead of the verdict; nothing: it stopped.
    void showRunning(std::optional<int> elapsedMs);
    /// In their order.
    [[nodiscard]] const std::vector<QLineEdit*>& fields() const { return m_fields; }

Q_SIGNALS:
    void typed();
    /// A field was left, or another way chosen.
    void given();

private:
    void addFields(QHBoxLayout& row);
    void addField(QHBoxLayout& row, const QString& caption, const QString& name);
    void addWays(QHBoxLayout& row);
    [[nodiscard]] FieldTestTyped typedNow() const;
    void review();

    const common::Look& m_look;
    screens::FieldTest m_test;
    FieldTestPerson m_person;
    std::vector<QLineEdit*> m_fields;
    common::SegmentedChoice* m_way = nullptr;
    QLabel* m_verdict;
    QLabel* m_detail;
    QLabel* m_running;
    QLabel* m_earlier;
};

}  // namespace chalk::ui::onboarding
