package org.fandown.evidence;

import org.fandown.document.Node;

/** Fetches the vehicle document that a file names instead of containing it. */
@FunctionalInterface
public interface VehicleSource {
    /** Refuses every name: for documents that have to contain their vehicle. */
    VehicleSource NONE =
            name -> {
                throw new IllegalArgumentException(
                        "here the vehicle has to be written in the document itself");
            };

    /**
     * The document of the given name.
     *
     * @param name as the file writes it, usually a path beside that file
     * @throws IllegalArgumentException with a clause for the user, if there is none
     */
    Node fetch(String name);
}
