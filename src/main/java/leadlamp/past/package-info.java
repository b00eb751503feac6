/** What probably happened to an engine before it came here, told from what an audit's first stages show. */
package leadlamp.past;
