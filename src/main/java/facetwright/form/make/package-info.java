/** Forms made from measures: prisms, pyramids, profiles turned, and hulls of points. */
package facetwright.form.make;
