/**
 * Classical laminate theory of a stack of plies: stiffness, strains and stresses ply by ply, first
 * failure, warp on cooling; and what broken test strips tell. Nothing here knows cloth, resin or
 * the shape of a plate.
 */
package felloe.laminate;
