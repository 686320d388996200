package org.fandown.braking;

/** What the estimate knows of one wheel. */
sealed interface WheelModel permits WheelModel.Unbraked, WheelModel.Unknown, BrakeModel {

    /** A wheel without a brake. */
    record Unbraked() implements WheelModel {}

    /** A wheel with a brake of which no force can be estimated. */
    record Unknown(String reason) implements WheelModel {}
}
