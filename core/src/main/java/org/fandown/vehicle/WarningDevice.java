package org.fandown.vehicle;

/** How the driver is warned of low air pressure. */
public enum WarningDevice {
    /** A lamp only. */
    LAMP,
    /** A buzzer only. */
    BUZZER,
    /** A lamp and a buzzer together. */
    LAMP_AND_BUZZER,
    /** A flag or arm that drops into the driver's view. */
    FLAG,
    /** A flag and a buzzer together. */
    FLAG_AND_BUZZER;

    /** Returns whether the driver can see the warning. */
    public boolean isVisible() {
        return this != BUZZER;
    }

    /** Returns whether the driver can hear the warning. */
    public boolean isAudible() {
        return this == BUZZER || this == LAMP_AND_BUZZER || this == FLAG_AND_BUZZER;
    }
}
