#pragma once

#include "ui/shell/page.h"

#include <QLineEdit>
#include <QVBoxLayout>

#include <vector>

namespace chalk::tests {

/// A page that keeps what the window asked of it. With a client in its place it is about that client.
class PlainPage final : public ui::shell::Page {
public:
    explicit PlainPage(const QString& name, QWidget* parent) : Page(parent), m_name(name), m_field(new QLineEdit(this))
    {
        m_field->setAccessibleName(QStringLiteral("Filter of %1").arg(name));
        auto* column = new QVBoxLayout(this);
        column->addWidget(m_field);
    }

    std::vector<ui::shell::Place> opened;
    int refreshes = 0;
    int prints = 0;
    int escapes = 0;
    bool isPrintable = false;
    bool isNarrow = false;
    bool isLow = false;

    [[nodiscard]] QString title() const override { return m_client ? m_client->name : m_name; }
    void open(const ui::shell::Place& place) override
    {
        opened.push_back(place);
        m_client.reset();
        if (!place.client.isNone()) {
            m_client = ui::shell::OpenClient{place.client, QStringLiteral("Client %1").arg(place.client.value())};
        }
        m_field->setFocus();
    }
    [[nodiscard]] ui::shell::Place place() const override { return opened.empty() ? ui::shell::Place() : opened.back(); }
    void refresh() override { ++refreshes; }
    [[nodiscard]] std::vector<ui::shell::KeyHint> keyHints() const override { return {{QStringLiteral("Enter"), QStringLiteral("Open")}}; }
    [[nodiscard]] std::optional<ui::shell::OpenClient> openClient() const override { return m_client; }
    [[nodiscard]] bool canPrint() const override { return isPrintable; }
    void print() override { ++prints; }
    [[nodiscard]] QWidget* filterField() override { return m_field; }
    bool closeOrClear() override { return ++escapes > 0; }
    void setRoom(bool narrow, bool low) override
    {
        isNarrow = narrow;
        isLow = low;
    }
    [[nodiscard]] QLineEdit* field() const { return m_field; }

private:
    QString m_name;
    QLineEdit* m_field;
    std::optional<ui::shell::OpenClient> m_client;
};

}  // namespace chalk::tests
