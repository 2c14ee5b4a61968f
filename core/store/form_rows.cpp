#include "core/store/form_rows.h"

#include "core/store/profile_rows.h"

namespace chalk::store {

FormRows::FormRows(Database& database)
    : m_database(database),
      m_insert(database, QStringLiteral("INSERT INTO form (client_id, kind, day, is_finished, detail) VALUES (?, '', ?, 0, '') RETURNING id")),
      m_fill(database, QStringLiteral("UPDATE form SET kind = ?, is_finished = ?, detail = ? WHERE id = ?"))
{
}

void FormRows::add(base::ClientId client, std::string_view kind, base::Date day, bool isFinished, const QString& detail)
{
    const std::int64_t id = m_insert.runForId(client, day);
    const SealedRow row = m_database.vault().toWrite("form", id);
    m_fill.run(kind, isFinished, m_database.vault().sealed(row, "detail", detail), id);
}

void putOpenForm(Database& database, base::ClientId client, FormKind kind, base::Date day, const QString& detail)
{
    Statement open(database, QStringLiteral("SELECT id FROM form WHERE client_id = ? AND kind = ? AND is_finished = 0"));
    if (!open.run(client, keyOf(kind)) || !open.next()) {
        FormRows(database).add(client, keyOf(kind), day, false, detail);
        return;
    }
    const std::int64_t id = open.integer(0);
    const SealedRow row = database.vault().toWrite("form", id);
    Statement(database, QStringLiteral("UPDATE form SET detail = ? WHERE id = ?")).run(database.vault().sealed(row, "detail", detail), id);
}

LetterRows::LetterRows(Database& database)
    : m_database(database),
      m_insert(database, QStringLiteral("INSERT INTO letter (client_id, written_by, day, valid_until_day, limits, findings, file_name) "
                                        "VALUES (?, '-', ?, ?, '', '', '') RETURNING id")),
      m_fill(database, QStringLiteral("UPDATE letter SET written_by = ?, limits = ?, findings = ?, file_name = ?, file = ? WHERE id = ?"))
{
}

void LetterRows::add(base::ClientId client, const Letter& letter)
{
    const std::int64_t id = m_insert.runForId(client, letter.day, letter.validUntil);
    Vault& vault = m_database.vault();
    const SealedRow row = vault.toWrite("letter", id);
    m_fill.run(vault.sealed(row, "written_by", letter.writtenBy), vault.sealed(row, "limits", letter.limits),
               vault.sealed(row, "findings", textOfMarks(letter.answers)), vault.sealed(row, "file_name", letter.fileName),
               vault.sealedBytes(row, "file", letter.file), id);
}

Letter letterOf(const Statement& row)
{
    constexpr int kId = 7;
    const SealedRow sealed = row.sealedRow("letter", row.integer(kId));
    return {row.openedText(0, sealed, "written_by"),      row.date(1),
            row.optionalDate(2),                          row.openedText(3, sealed, "limits"),
            marksOf(row.opened(4, sealed, "findings")),   row.openedText(5, sealed, "file_name"),
            row.openedBytes(6, sealed, "file")};
}

}  // namespace chalk::store
