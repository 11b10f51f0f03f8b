#pragma once
// A gauge on a serial line. Unplugging it is ordinary: the line is closed, watched for, and opened again when the
// device is back.

#include "gauge_input/gauge_line.h"
#include "gauge_input/line_joiner.h"

#include <QElapsedTimer>
#include <QObject>
#include <QSerialPort>
#include <QTimer>

namespace hammerline::gauge_input {

struct LineSettings {
    QString device{}; ///< "ttyUSB0" or a path
    qint32 baud = 9600;
    QSerialPort::DataBits dataBits = QSerialPort::Data8;
    QSerialPort::Parity parity = QSerialPort::NoParity;
    QSerialPort::StopBits stopBits = QSerialPort::OneStop;
};

class SerialGauge : public QObject {
    Q_OBJECT
public:
    enum class Link { Off, Listening, Lost };

    explicit SerialGauge(QObject *parent = nullptr);

    /// Opens the line; where that fails, keeps trying. The words of the last failure are in `trouble`.
    void listen(const LineSettings &settings);
    void stop();
    void setPattern(const LinePattern &pattern) { m_pattern = pattern; }
    /// What the note under measurement takes: dimension and sign. The unit comes from the line or the pattern.
    void setForm(units::TypedForm form) { m_form = form; }
    [[nodiscard]] Link link() const { return m_link; }
    [[nodiscard]] QString trouble() const { return m_trouble; }
    void setRetryInterval(int milliseconds) { m_retry.setInterval(milliseconds); }

signals:
    /// Every whole line, for the preview, before it is read.
    void lineArrived(const QByteArray &line);
    void readingArrived(const hammerline::gauge_input::GaugeReading &reading);
    /// A whole line that is no reading: why.
    void lineRefused(const QString &why);
    void linkChanged(hammerline::gauge_input::SerialGauge::Link link);

private:
    void tryToOpen();
    void takeBytes();
    void takeLine(const QByteArray &line);
    void handleError(QSerialPort::SerialPortError error);
    void lose();
    void setLink(Link link);

    QSerialPort m_port;
    QTimer m_retry;
    QElapsedTimer m_sinceOpened;
    bool m_firstBytes = true;
    LineJoiner m_joiner;
    LinePattern m_pattern;
    units::TypedForm m_form;
    Link m_link = Link::Off;
    QString m_trouble;
};

} // namespace hammerline::gauge_input
