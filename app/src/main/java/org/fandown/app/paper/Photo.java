package org.fandown.app.paper;

import java.util.Base64;

/**
 * A photo of something that is wrong.
 *
 * @param of what it shows, such as a part
 * @param jpeg the picture, JPEG in base64
 */
public record Photo(String of, String jpeg) {
    /** How every JPEG begins: the marks of its start and of what follows. */
    private static final int[] START = {0xff, 0xd8, 0xff};

    /**
     * Checks the picture.
     *
     * @throws IllegalArgumentException if it is no JPEG in base64
     */
    public Photo {
        byte[] bytes = Base64.getDecoder().decode(jpeg);
        for (int i = 0; i < START.length; i++) {
            if (bytes.length <= START.length || (bytes[i] & 0xff) != START[i]) {
                throw new IllegalArgumentException("This is no JPEG.");
            }
        }
    }
}
