#!/usr/bin/env bash
# Runs a command as two MPI processes on two "machines": network namespaces of their own, joined by a cable. Exit code 77: such
# namespaces cannot be made here (it takes root and the tool ip).
#
# usage: two_machines.sh MPIRUN COMMAND...
set -euo pipefail
mpirun=$1
shift
one=sinewright-one-$$ two=sinewright-two-$$ agent=
clean_up() {
  ip netns del "$one" 2>/dev/null || true
  ip netns del "$two" 2>/dev/null || true
  [[ -z $agent ]] || rm -f "$agent"
}
trap clean_up EXIT
{
  ip netns add "$one" && ip netns add "$two" &&
    ip link add "one$$" netns "$one" type veth peer name "two$$" netns "$two" &&
    ip -n "$one" addr add 10.77.0.1/24 dev "one$$" && ip -n "$two" addr add 10.77.0.2/24 dev "two$$" &&
    ip -n "$one" link set lo up && ip -n "$two" link set lo up &&
    ip -n "$one" link set "one$$" up && ip -n "$two" link set "two$$" up
} >&2 || exit 77

# What mpirun takes for ssh: its first argument is the machine, the rest the command.
agent=$(mktemp)
cat >"$agent" <<END
#!/usr/bin/env bash
shift
exec ip netns exec $two bash -c "\$*"
END
chmod +x "$agent"
ip netns exec "$one" "$mpirun" --allow-run-as-root --bind-to none --mca plm_rsh_agent "$agent" --mca btl tcp,self \
  --mca btl_tcp_if_include 10.77.0.0/24 --mca oob_tcp_if_include 10.77.0.0/24 --host 10.77.0.1:1,10.77.0.2:1 -n 2 "$@"
