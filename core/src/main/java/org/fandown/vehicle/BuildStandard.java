package org.fandown.vehicle;

/** A braking standard that a unit was built to, as its plate or papers name it. */
public enum BuildStandard {
    /** United States, Federal Motor Vehicle Safety Standard 121. */
    FMVSS_121,
    /** Canada, Motor Vehicle Safety Standard 121. */
    CMVSS_121,
    /** Australian Design Rule 35, powered vehicles. */
    ADR_35,
    /** Australian Design Rule 38, trailers. */
    ADR_38,
    /** UN Regulation No. 13. */
    UN_R13,
    /** Directive 71/320/EEC. */
    EEC_71_320,
    /** New Zealand heavy-vehicle brake code. */
    NZ_BRAKE_CODE,
    /** Indian Standard 11852. */
    IS_11852
}
