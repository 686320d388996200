/** Laws that hold whatever is done to the practice truck. */
@org.jspecify.annotations.NullMarked
package org.fandown.property.practice;
