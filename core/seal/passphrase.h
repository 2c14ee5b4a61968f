#pragma once

#include <QString>

#include <cstddef>

namespace chalk::seal {

/// A passphrase, in memory that is wiped when it goes. What was typed stands in the memory of Qt's fields too, which nobody can wipe for certain.
class Passphrase {
public:
    /// The fewest characters of a new one.
    static constexpr int kFewest = 8;

    Passphrase() = default;
    /// The same letters are the same passphrase, however they were typed (Unicode NFC).
    explicit Passphrase(const QString& text);
    Passphrase(const Passphrase& other);
    Passphrase(Passphrase&& other) noexcept;
    Passphrase& operator=(Passphrase other) noexcept;
    ~Passphrase();

    [[nodiscard]] bool isEmpty() const { return m_size == 0; }
    [[nodiscard]] const char* bytes() const { return m_bytes; }
    [[nodiscard]] std::size_t size() const { return m_size; }

private:
    void keep(const char* bytes, std::size_t size);

    char* m_bytes = nullptr;
    std::size_t m_size = 0;
};

}  // namespace chalk::seal
